package bedwright.file;

import java.util.ArrayList;
import java.util.List;

/** Gathers the faults of a weather file, of which there may be one on every line: all are counted, the first are kept. */
final class WeatherFaults {
    /** So many are told one by one. */
    static final int TOLD = 50;

    private final String file;
    private final List<Fault> first = new ArrayList<>();
    private int count;

    WeatherFaults(String file) {
        this.file = file;
    }

    /**
     * @param line from 1
     * @param column from 1
     */
    void add(int line, int column, String message) {
        count++;
        if (first.size() < TOLD) {
            first.add(new Fault(file, new Place(line, column), "", message));
        }
    }

    void addAll(WeatherFaults others) {
        count += others.count;
        others.first.stream().limit(TOLD - first.size()).forEach(first::add);
    }

    int count() {
        return count;
    }

    /**
     * @throws FaultyFile if there is any fault
     */
    void tell() {
        if (count > 0) {
            throw new FaultyFile(first, count);
        }
    }
}
