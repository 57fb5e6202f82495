package bedwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;

/**
 * The bytes of a JSON file as a tree in which every key and value knows its place.
 *
 * @param root the outermost value, or as much of it as could be read; null if there is nothing
 * @param faults faults of the bytes and of the syntax, in order of place
 * @param whole whether all of it could be read
 */
record JsonTree(@Nullable Node root, List<Fault> faults, boolean whole) {
    /** Brackets within brackets, at the most. */
    static final int DEEPEST = 100;

    /** Size of a file, at the most. */
    static final int LARGEST = 64 * 1024 * 1024;

    /** Characters of a number, at the most. */
    private static final int LONGEST_NUMBER = 200;

    /** Values in a file, at the most: more is no season, and could fill the memory. */
    private static final int MOST_VALUES = 2_000_000;

    private static final Pattern HALF = Pattern.compile("\\p{Cs}");

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST + 2)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .build())
            .build();

    /** Reads as far as the file can be read. */
    static JsonTree read(String file, byte[] bytes) {
        if (bytes.length > LARGEST) {
            String message = "The file has " + bytes.length / (1024 * 1024) + " MB; more than "
                    + LARGEST / (1024 * 1024) + " MB is not read. Is it the right file?";
            return new JsonTree(null, List.of(new Fault(file, Place.START, "", message)), false);
        }
        Decoded decoded = Decoded.of(bytes);
        String trouble = decoded.trouble();
        if (trouble != null) {
            Place end = new Lines(decoded.text()).at(decoded.text().length);
            return new JsonTree(null, List.of(new Fault(file, end, "", trouble)), false);
        }
        return new Reading(file, decoded.text()).read();
    }

    /** One reading of one file. */
    private static final class Reading {
        private final String file;
        private final char[] json;
        private final Lines lines;
        private final List<Fault> faults = new ArrayList<>();
        private boolean broken;
        private int values;

        Reading(String file, char[] json) {
            this.file = file;
            this.json = json;
            this.lines = new Lines(json);
        }

        JsonTree read() {
            Node root = null;
            try (JsonParser tokens = JSON.createParser(ObjectReadContext.empty(), json)) {
                Optional<JsonToken> first = next(tokens);
                if (first.isPresent()) {
                    root = value(tokens, first.get(), "", 1);
                    if (!broken && next(tokens).isPresent()) {
                        broke(
                                lines.at(here(tokens)),
                                "",
                                "Something stands behind the end of the file's last bracket."
                                        + " A file holds one { … }; take away what follows it, or a bracket too many.");
                    }
                } else if (!broken) {
                    broke(Place.START, "", "The file is empty. A season file is one group { … } of keys and values.");
                }
            }
            return new JsonTree(root, faults, !broken);
        }

        private Optional<JsonToken> next(JsonParser tokens) {
            try {
                JsonToken token = tokens.nextToken();
                if (token == JsonToken.VALUE_STRING) {
                    // A text is read lazily: a fault within it must show here.
                    tokens.getString();
                }
                return Optional.ofNullable(token);
            } catch (JacksonException e) {
                SyntaxFault found = SyntaxFault.find(json)
                        .orElseGet(() -> new SyntaxFault(
                                (int) e.getLocation().getCharOffset(),
                                "The file can't be read from here on: " + e.getOriginalMessage()));
                broke(lines.at(found.offset()), "", found.message(lines));
                return Optional.empty();
            }
        }

        private Node value(JsonParser tokens, JsonToken token, String path, int depth) {
            Place place = lines.at(here(tokens));
            if (++values > MOST_VALUES) {
                broke(place, path, "The file holds more than " + MOST_VALUES + " values. Is it the right file?");
                return new Node.Unreadable(place);
            }
            return switch (token) {
                case START_OBJECT -> depth > DEEPEST ? tooDeep(place, path) : group(tokens, place, path, depth);
                case START_ARRAY -> depth > DEEPEST ? tooDeep(place, path) : many(tokens, place, path, depth);
                case VALUE_STRING -> text(tokens.getString(), place, path);
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(tokens.getString(), place, path);
                case VALUE_TRUE -> new Node.Truth(place, true);
                case VALUE_FALSE -> new Node.Truth(place, false);
                default -> new Node.Nothing(place);
            };
        }

        private Node group(JsonParser tokens, Place place, String path, int depth) {
            List<Node.Member> members = new ArrayList<>();
            Optional<JsonToken> token = next(tokens);
            while (token.isPresent() && token.get() == JsonToken.PROPERTY_NAME) {
                Place keyPlace = lines.at(here(tokens));
                String key = tokens.currentName();
                boolean whole = isWhole(key, keyPlace, path);
                Optional<JsonToken> value = next(tokens);
                if (value.isEmpty()) {
                    break;
                }
                Node node = value(tokens, value.get(), Pointer.to(path, key), depth + 1);
                if (whole) {
                    members.add(new Node.Member(keyPlace, key, node));
                }
                token = broken ? Optional.empty() : next(tokens);
            }
            return new Node.Group(place, members, broken);
        }

        private Node many(JsonParser tokens, Place place, String path, int depth) {
            List<Node> entries = new ArrayList<>();
            Optional<JsonToken> token = next(tokens);
            while (token.isPresent() && token.get() != JsonToken.END_ARRAY) {
                entries.add(value(tokens, token.get(), Pointer.to(path, entries.size()), depth + 1));
                token = broken ? Optional.empty() : next(tokens);
            }
            return new Node.Many(place, entries, broken);
        }

        private Node tooDeep(Place place, String path) {
            broke(
                    place,
                    path,
                    "Brackets stand within brackets more than " + DEEPEST
                            + " deep here; a season file never needs that. Take some away.");
            return new Node.Unreadable(place);
        }

        private Node text(String text, Place place, String path) {
            return isWhole(text, place, path) ? new Node.Text(place, text) : new Node.Unreadable(place);
        }

        /** Half of a character that takes two could not be written back as UTF-8. */
        private boolean isWhole(String text, Place place, String path) {
            Matcher half = HALF.matcher(text);
            if (half.find()) {
                faults.add(new Fault(
                        file,
                        place,
                        path,
                        "This text holds half a character (written "
                                + String.format(Locale.ROOT, "\\u%04x", (int)
                                        half.group().charAt(0))
                                + "). Write the character itself."));
                return false;
            }
            return true;
        }

        private Node number(String number, Place place, String path) {
            if (number.length() > LONGEST_NUMBER) {
                faults.add(new Fault(
                        file,
                        place,
                        path,
                        "The number " + Words.shortened(number) + " has " + number.length()
                                + " characters. Round it to a few digits."));
                return new Node.Unreadable(place);
            }
            return new Node.Number(place, number);
        }

        private void broke(Place place, String path, String message) {
            broken = true;
            faults.add(new Fault(file, place, path, message));
        }

        private static long here(JsonParser tokens) {
            return tokens.currentTokenLocation().getCharOffset();
        }
    }
}
