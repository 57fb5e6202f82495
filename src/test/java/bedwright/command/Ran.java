package bedwright.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What a command printed and how it ended. */
record Ran(int code, String out, String err) {

    static Ran of(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] typed = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            typed[i] = args[i].toString();
        }
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), typed);
        return new Ran(code, out.toString(), err.toString());
    }
}
