package bedwright.season;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One bed on the ground.
 *
 * @param index its number in the season, from 0
 * @param name the block's name, with its number in the block behind it where there are several
 * @param block the block it belongs to
 * @param number its number in the block, from 1
 * @param start where its centre line starts, in metres
 * @param end where its centre line ends, in metres
 */
public record Bed(int index, String name, BedBlock block, int number, Point start, Point end) {

    /** All beds of the blocks, in order. */
    static List<Bed> of(List<BedBlock> blocks) {
        List<Bed> beds = new ArrayList<>();
        for (BedBlock block : blocks) {
            double heading = Math.toRadians(block.heading());
            double east = Math.sin(heading);
            double north = Math.cos(heading);
            for (int i = 0; i < block.count(); i++) {
                double aside = i * (block.width() + block.path());
                Point start =
                        new Point(block.at().x() + aside * north, block.at().y() - aside * east);
                Point end = new Point(start.x() + block.length() * east, start.y() + block.length() * north);
                String name = block.count() == 1 ? block.name() : block.name() + (i + 1);
                beds.add(new Bed(beds.size(), name, block, i + 1, start, end));
            }
        }
        return List.copyOf(beds);
    }

    /** The point at a share of the bed's length, 0 its start and 1 its end. */
    public Point at(double share) {
        return new Point(start.x() + share * (end.x() - start.x()), start.y() + share * (end.y() - start.y()));
    }

    /** Whether an entry of the block that names this number, or none, speaks of this bed. */
    boolean isMeantBy(@Nullable Integer bed) {
        return bed == null || bed == number;
    }

    /** The times in which this bed is taken. */
    public List<BedBlock.Taken> taken() {
        return block.taken().stream().filter(t -> isMeantBy(t.bed())).toList();
    }

    /** The families that grew in this bed in earlier years. */
    public List<BedBlock.Grown> history() {
        return block.history().stream().filter(g -> isMeantBy(g.bed())).toList();
    }
}
