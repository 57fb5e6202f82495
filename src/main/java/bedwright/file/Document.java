package bedwright.file;

import java.util.ArrayList;
import java.util.List;

/** Bytes to a record, with all faults. */
final class Document {
    private Document() {}

    static <T extends Record> T read(String name, byte[] bytes, Class<T> type) {
        JsonTree tree = JsonTree.read(name, bytes);
        List<Fault> faults = new ArrayList<>(tree.faults());
        Node root = tree.root();
        if (root == null) {
            throw new FaultyFile(faults);
        }
        Binder binder = new Binder(name);
        T record = binder.bind(root, type);
        faults.addAll(binder.faults());
        if (!faults.isEmpty()) {
            throw new FaultyFile(faults);
        }
        return record;
    }
}
