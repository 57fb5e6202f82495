package bedwright.file;

import java.util.List;
import java.util.Optional;

/** A value of a JSON file with its place. */
sealed interface Node {
    Place place();

    /** What stands there, in a grower's words. */
    String said();

    /**
     * Keys with their values.
     *
     * @param members in the order of the file, repeated keys included
     * @param cut whether the file broke off or became unreadable inside
     */
    record Group(Place place, List<Member> members, boolean cut) implements Node {
        @Override
        public String said() {
            return members.isEmpty() ? "an empty group { }" : "a group { … }";
        }

        /** The value of a key, the first if it is repeated. */
        Optional<Node> get(String key) {
            return members.stream()
                    .filter(m -> m.key().equals(key))
                    .map(Member::value)
                    .findFirst();
        }
    }

    /** A key, where it stands, and its value. */
    record Member(Place place, String key, Node value) {}

    /** Values one after another; {@code cut} as in {@link Group}. */
    record Many(Place place, List<Node> entries, boolean cut) implements Node {
        @Override
        public String said() {
            return entries.isEmpty() ? "an empty list [ ]" : "a list [ … ]";
        }
    }

    /** A text. */
    record Text(Place place, String value) implements Node {
        @Override
        public String said() {
            return "the text " + Words.quoted(value);
        }
    }

    /** A number as it is written. */
    record Number(Place place, String text) implements Node {
        @Override
        public String said() {
            return "the number " + Words.shortened(text);
        }
    }

    /** True or false. */
    record Truth(Place place, boolean value) implements Node {
        @Override
        public String said() {
            return Boolean.toString(value);
        }
    }

    /** The word null. */
    record Nothing(Place place) implements Node {
        @Override
        public String said() {
            return "null";
        }
    }

    /** Something that could be read past but not taken; its fault is told already. */
    record Unreadable(Place place) implements Node {
        @Override
        public String said() {
            return "something unreadable";
        }
    }
}
