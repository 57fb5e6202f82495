package bedwright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the schemas that are kept in the source, after a change of the season's records. */
final class SchemaWriter {
    static final Path FOLDER = Path.of("src/main/resources/bedwright");

    private SchemaWriter() {}

    public static void main(String[] args) throws IOException {
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve("season.schema.json"), Schema.season());
        Files.writeString(FOLDER.resolve("plan.schema.json"), Schema.plan());
        Files.writeString(FOLDER.resolve("prices.schema.json"), Schema.prices());
        Files.writeString(FOLDER.resolve("crop-book.schema.json"), Schema.book());
        Files.writeString(FOLDER.resolve("answers.schema.json"), Schema.answers());
        Files.writeString(FOLDER.resolve("strategies.schema.json"), Schema.strategies());
    }
}
