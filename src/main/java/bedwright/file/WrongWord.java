package bedwright.file;

/** What is said of a word without quotation marks that is no value, and of one that stands behind a value. */
final class WrongWord {
    private WrongWord() {}

    /**
     * @param word up to the next blank, comma, colon, bracket or quotation mark
     * @param isOutermost whether it stands where the file's one value should
     */
    static String said(String word, boolean isOutermost) {
        String shown = Words.shortened(word);
        if (isOutermost && word.startsWith("<")) {
            return "The file begins with " + shown
                    + ", as a page of the web does. Is it the right file? A season file is"
                    + " one group { … } of keys and values.";
        }
        if (word.matches("[-+.0-9].*")) {
            return "The number " + shown + " is not written as numbers are here: digits with a point, as in 0.5, 12"
                    + " or -3.25, without a unit, a plus sign or zeros in front.";
        }
        if (word.matches("(?i)true|yes|on|false|no|off|null|none|nil|nan|[-+]?infinity")) {
            return "Here stands " + shown
                    + ", which is none of true, false or null (in small letters). Write one of them"
                    + " or a number.";
        }
        if (isOutermost) {
            return "The file begins with " + shown
                    + ", but a season file is one group { … } of keys and values. Is it the" + " right file?";
        }
        return "Here stands " + shown + " without quotation marks. Write " + Words.quoted(word);
    }

    /** What is missing before something that stands behind a value; a unit, or a blank in a number, reads so too. */
    static String afterAValue(char[] json, int at) {
        int before = at - 1;
        while (before > 0 && Character.isWhitespace(json[before])) {
            before--;
        }
        boolean split = before >= 0 && Character.isDigit(json[before]) && Character.isLetterOrDigit(json[at]);
        return "A comma is missing before this."
                + (split
                        ? " Or is it part of the number? A number stands without a unit and without blanks: 2000"
                        : "");
    }
}
