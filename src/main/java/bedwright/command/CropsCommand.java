package bedwright.command;

import bedwright.file.BookFigures;
import bedwright.file.CropBookFile;
import bedwright.file.PlainJson;
import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Figure;
import bedwright.season.Method;
import bedwright.season.Origin;
import bedwright.season.Sureness;
import bedwright.season.Units;
import bedwright.sheet.Care;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the crop book. */
@Command(
        name = "crops",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Lists the crops of the crop book, or shows one with all its figures, where each comes from and how sure it is:"
                    + " sure, fair or weak.",
            "A season file takes a crop from the book with { \"book\": \"zinnia\" } among its crops, and says beside it"
                    + " only what it knows better.",
            "",
            "  target/bedwright crops",
            "  target/bedwright crops zinnia",
            "  target/bedwright crops zinnia --units feet"
        })
final class CropsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "CROP", description = "A crop of the book; left out: all are listed.")
    private @Nullable String name;

    @Option(
            names = "--units",
            paramLabel = "metres|feet",
            description = "What the figures of a crop are in: metres and °C, or feet and °F; left out: metres.")
    private Units units = Units.METRES;

    @Option(names = "--format", paramLabel = "text|json", description = "What goes to the screen; left out: text.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        CropBook book = CropBookFile.ours();
        boolean json = format == PlanCommand.Format.JSON;
        PrintWriter out = spec.commandLine().getOut();
        if (name == null) {
            List<Crop> crops = BookFigures.crops(book);
            if (json) {
                Map<String, Object> answer = new LinkedHashMap<>();
                answer.put("version", 1);
                answer.put("about", book.about());
                answer.put("crops", crops.stream().map(CropsCommand::brief).toList());
                out.print(PlainJson.text(answer));
            } else {
                list(out, book, crops);
            }
        } else {
            Crop crop = BookFigures.find(book, name).orElseThrow(() -> unknown(book, Objects.requireNonNull(name)));
            if (json) {
                out.print(PlainJson.text(whole(book, crop)));
            } else {
                show(out, book, crop);
            }
        }
        out.flush();
        return Exit.DONE;
    }

    private ParameterException unknown(CropBook book, String asked) {
        List<String> like = BookFigures.like(book, asked);
        return new ParameterException(
                spec.commandLine(),
                "There is no crop \"" + asked + "\" in the crop book. "
                        + (like.isEmpty()
                                ? "The command \"crops\" alone lists them."
                                : "Did you mean \"" + String.join("\" or \"", like) + "\"?"));
    }

    private static void list(PrintWriter out, CropBook book, List<Crop> crops) {
        out.println(book.about());
        out.println();
        out.printf("%-24s %-16s %-10s %7s   %s%n", "crop", "family", "role", "methods", "figures: sure/fair/weak");
        List<BookFigures.Given> all = new ArrayList<>();
        for (Crop crop : crops) {
            List<BookFigures.Given> figures = BookFigures.of(crop);
            all.addAll(figures);
            out.printf(
                    Locale.ROOT,
                    "%-24s %-16s %-10s %7d   %d/%d/%d%n",
                    crop.name(),
                    Objects.requireNonNullElse(crop.family(), ""),
                    crop.kinds().getFirst().kind().split("/", 2)[0],
                    crop.methods().size(),
                    count(figures, Sureness.SURE),
                    count(figures, Sureness.FAIR),
                    count(figures, Sureness.WEAK));
        }
        out.println();
        int methods = crops.stream().mapToInt(crop -> crop.methods().size()).sum();
        out.printf(
                Locale.ROOT,
                "%d crops, %d methods. Of %,d figures %s are sure, %s fair, %s weak.%n",
                crops.size(),
                methods,
                all.size(),
                share(all, Sureness.SURE),
                share(all, Sureness.FAIR),
                share(all, Sureness.WEAK));
        List<String> origins = new ArrayList<>();
        for (Origin origin : Origin.values()) {
            long of = all.stream()
                    .filter(given -> given.figure() != null && given.figure().from() == origin)
                    .count();
            if (of > 0) {
                origins.add(String.format(Locale.ROOT, "%.1f %% %s", 100.0 * of / all.size(), words(origin)));
            }
        }
        out.println("What they rest on: " + String.join("; ", origins) + ".");
    }

    /** Contradictions between publications about this crop, and how each was settled. */
    private static List<String> settled(CropBook book, Crop crop) {
        String plain = crop.name().split(",", 2)[0];
        return book.settled().stream()
                .filter(settled -> settled.about().contains(plain))
                .map(settled -> "Settled, " + settled.about() + ": " + settled.contradiction() + ". Taken: "
                        + settled.taken() + ".")
                .toList();
    }

    private static long count(List<BookFigures.Given> figures, Sureness sure) {
        return figures.stream()
                .filter(given -> given.figure() != null && given.figure().sure() == sure)
                .count();
    }

    private static String share(List<BookFigures.Given> figures, Sureness sure) {
        return String.format(Locale.ROOT, "%.1f %%", 100.0 * count(figures, sure) / figures.size());
    }

    private void show(PrintWriter out, CropBook book, Crop crop) {
        out.println(crop.name() + (crop.family() == null ? "" : ", of the family " + crop.family()));
        crop.hazards().forEach(hazard -> out.println("Take care. " + Care.sentence(hazard)));
        if (!crop.hazards().isEmpty()) {
            out.println("The label, local rules and licensed practice come first.");
        }
        settled(book, crop).forEach(out::println);
        List<BookFigures.Given> figures = BookFigures.of(crop, units);
        out.println();
        print(out, figures, null);
        for (Method method : crop.methods()) {
            out.println();
            out.println(method.name() + " (" + method.start().name().toLowerCase(Locale.ROOT)
                    + (method.pinched() ? ", pinched" : "") + ")");
            print(out, figures, method.name());
        }
    }

    private static void print(PrintWriter out, List<BookFigures.Given> figures, @Nullable String method) {
        for (BookFigures.Given given : figures) {
            if (Objects.equals(given.method(), method)) {
                Figure figure = given.figure();
                out.printf(
                        "  %-4s  %s: %s%s%n        %s%n",
                        word(figure),
                        given.what(),
                        given.value(),
                        given.unit().isEmpty() ? "" : " " + given.unit(),
                        restsOn(figure));
            }
        }
    }

    private static String word(@Nullable Figure figure) {
        return figure == null ? "?" : figure.sure().name().toLowerCase(Locale.ROOT);
    }

    private static String restsOn(@Nullable Figure figure) {
        if (figure == null) {
            return "nobody says where it comes from";
        }
        Origin from = figure.from();
        if (from == null) {
            return Objects.requireNonNullElse(figure.source(), "nobody says where it comes from");
        }
        String words = words(from);
        return figure.source() == null ? words : words + ": " + figure.source();
    }

    private static String words(Origin origin) {
        return switch (origin) {
            case PUBLISHED -> "published";
            case CALCULATED -> "calculated";
            case MEMORY -> "from memory";
            case PRACTICE -> "common practice, no source";
            case ASSUMED -> "assumed";
            case OWN -> "own";
        };
    }

    private static Map<String, Object> brief(Crop crop) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", crop.name());
        json.put("family", Objects.requireNonNullElse(crop.family(), ""));
        json.put("methods", crop.methods().stream().map(Method::name).toList());
        List<BookFigures.Given> figures = BookFigures.of(crop);
        for (Sureness sure : Sureness.values()) {
            json.put(sure.name().toLowerCase(Locale.ROOT), count(figures, sure));
        }
        return json;
    }

    private Map<String, Object> whole(CropBook book, Crop crop) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.putAll(brief(crop));
        json.put("cautions", crop.hazards().stream().map(Care::sentence).toList());
        json.put("settled", settled(book, crop));
        json.put(
                "figures",
                BookFigures.of(crop, units).stream()
                        .map(given -> {
                            Map<String, Object> one = new LinkedHashMap<>();
                            one.put("method", Objects.requireNonNullElse(given.method(), ""));
                            one.put("key", given.key());
                            one.put("what", given.what());
                            one.put("value", given.value());
                            one.put("unit", given.unit());
                            one.put("sure", word(given.figure()));
                            one.put("from", restsOn(given.figure()));
                            return one;
                        })
                        .toList());
        return json;
    }
}
