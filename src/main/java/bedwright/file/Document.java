package bedwright.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * A file that has been read without a fault.
 *
 * @param name what faults call the file
 * @param root its values with their places
 * @param record what it holds
 */
record Document<T extends Record>(String name, Node root, T record) {

    /**
     * Reads bytes as a record and checks it; all faults are told at once.
     *
     * @param check finds what does not hold together
     * @throws FaultyFile if there is any fault
     */
    static <T extends Record> Document<T> read(
            String name, byte[] bytes, Class<T> type, Function<T, List<Flaw>> check) {
        return read(name, bytes, type, FromBook.Filled::as, check);
    }

    /**
     * Likewise, of a tree that is filled up before it is bound.
     *
     * @param filling takes the tree as it is written and gives it as it is meant
     */
    static <T extends Record> Document<T> read(
            String name,
            byte[] bytes,
            Class<T> type,
            Function<Node, FromBook.Filled> filling,
            Function<T, List<Flaw>> check) {
        JsonTree tree = JsonTree.read(name, bytes);
        List<Fault> faults = new ArrayList<>(tree.faults());
        Node written = tree.root();
        if (written == null) {
            throw new FaultyFile(faults);
        }
        WrongSort.of(name, written, type).ifPresent(fault -> {
            throw new FaultyFile(List.of(fault));
        });
        FromBook.Filled filled = filling.apply(written);
        faults.addAll(filled.faults());
        Node root = filled.root();
        Binder binder = new Binder(name, FileUnits.of(root));
        T record = binder.bind(root, type);
        // Where the syntax breaks within a number, what was read of it is not what was meant.
        binder.faults().stream()
                .filter(fault -> tree.whole() || !isToldAt(fault.place(), tree.faults()))
                .forEach(faults::add);
        // Of a file that breaks off nobody knows what the rest would have said.
        if (tree.whole()) {
            Set<String> doubtful = new LinkedHashSet<>(binder.doubtful());
            doubtful.addAll(filled.doubtful());
            for (Flaw flaw : check.apply(record)) {
                if (!flaw.restsOnAny(doubtful)) {
                    faults.add(fault(name, root, flaw));
                }
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultyFile(faults);
        }
        return new Document<>(name, root, record);
    }

    private static boolean isToldAt(Place place, List<Fault> faults) {
        return faults.stream().anyMatch(fault -> fault.place().equals(place));
    }

    /** Flaws with the places at which they show in this file. */
    List<Fault> placed(List<Flaw> flaws) {
        return flaws.stream().map(flaw -> fault(name, root, flaw)).toList();
    }

    private static Fault fault(String name, Node root, Flaw flaw) {
        return new Fault(name, Pointer.place(root, flaw.path(), flaw.ofKey()), flaw.path(), flaw.message());
    }

    /**
     * The bytes of a record's file.
     *
     * @throws IllegalArgumentException if the record could not be read back from them as it is: a value out of its
     *     range, or what no file can hold
     */
    static byte[] bytes(Record record) {
        byte[] bytes = JsonText.of(Unbinder.group(record)).getBytes(StandardCharsets.UTF_8);
        JsonTree tree = JsonTree.read("record", bytes);
        Binder binder = new Binder("record", FileUnits.ofRecord(record));
        Node root = tree.root();
        Record back = root == null ? null : binder.bind(root, record.getClass());
        if (!tree.faults().isEmpty() || !binder.faults().isEmpty() || !record.equals(back)) {
            throw new IllegalArgumentException("No file can hold this "
                    + record.getClass().getSimpleName() + ": " + tree.faults() + binder.faults());
        }
        return bytes;
    }
}
