package bedwright.command;

/** Exit codes. */
final class Exit {
    static final int DONE = 0;
    /** The plan breaks a hard rule. */
    static final int RULE_BROKEN = 1;
    /** Wrong usage. */
    static final int USAGE = 2;
    /** A faulty input file. */
    static final int FAULTY_FILE = 3;
    /** A file that can't be read or written. */
    static final int FILE_TROUBLE = 4;
    /** A fault of ours. */
    static final int OUR_FAULT = 70;
    /** Interrupted, with the best plan kept. */
    static final int INTERRUPTED = 130;

    private Exit() {}
}
