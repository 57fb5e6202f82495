package bedwright.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Bytes as text.
 *
 * @param text the characters, without a byte order mark, as far as the bytes are UTF-8
 * @param trouble what is wrong with the byte behind them, or null if there is none
 */
record Decoded(char[] text, @Nullable String trouble) {
    private static final char BOM = '\uFEFF';
    private static final String MEND = " Save the file as UTF-8.";

    static Decoded of(byte[] bytes) {
        CharBuffer decoded = CharBuffer.allocate(bytes.length);
        ByteBuffer left = ByteBuffer.wrap(bytes);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(left, decoded, true);
        decoded.flip();
        int skipped = decoded.limit() > 0 && decoded.get(0) == BOM ? 1 : 0;
        char[] text = Arrays.copyOfRange(decoded.array(), skipped, decoded.limit());
        int zero = indexOfZero(text);
        if (zero >= 0) {
            return new Decoded(Arrays.copyOf(text, zero), zero(zero));
        }
        return new Decoded(text, result.isError() ? encoding(bytes, left.position()) : null);
    }

    private static int indexOfZero(char[] text) {
        for (int i = 0; i < text.length; i++) {
            if (text[i] == 0) {
                return i;
            }
        }
        return -1;
    }

    /** In UTF-16 every other byte of plain letters is 0; elsewhere a file holds zeros where its disk lost it. */
    private static String zero(int at) {
        return at <= 1
                ? "The file is written in UTF-16, not in UTF-8." + MEND
                : "The byte 00 here is no part of any text: the file is damaged. Take a whole copy of it.";
    }

    private static String encoding(byte[] bytes, int offset) {
        boolean wide = bytes.length > 1 && (bytes[0] == -1 && bytes[1] == -2 || bytes[0] == -2 && bytes[1] == -1);
        return wide
                ? "The file is written in UTF-16, not in UTF-8." + MEND
                : String.format(
                                Locale.ROOT,
                                "The byte %02X here is no UTF-8; the file is in another encoding.",
                                bytes[offset])
                        + MEND;
    }
}
