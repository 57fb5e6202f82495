package bedwright.file;

import bedwright.season.BookCrop;
import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Evidence;
import bedwright.season.Family;
import bedwright.season.Figure;
import bedwright.season.Method;
import bedwright.season.Origin;
import bedwright.season.Source;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What does not hold together in a crop book, above all figures of which nobody says where they come from. */
final class BookCheck {
    private final CropBook book;
    private final Flaws flaws = new Flaws();

    private BookCheck(CropBook book) {
        this.book = book;
    }

    static List<Flaw> of(CropBook book) {
        BookCheck check = new BookCheck(book);
        check.flaws.unlessDifferent("crop", book.names(), i -> "/crops/" + i + "/crop/name");
        check.flaws.unlessDifferent(
                "family", book.families().stream().map(Family::name).toList(), i -> "/families/" + i + "/name");
        check.flaws.unlessDifferent(
                "source", book.sources().stream().map(Source::name).toList(), i -> "/sources/" + i + "/name");
        for (int i = 0; i < book.usual().size(); i++) {
            check.evidence("/usual/" + i, book.usual().get(i), List.of());
        }
        for (int i = 0; i < book.crops().size(); i++) {
            check.crop("/crops/" + i, book.crops().get(i));
        }
        return check.flaws.found();
    }

    private void crop(String path, BookCrop entry) {
        Crop crop = entry.crop();
        if (crop.family() != null) {
            flaws.unlessKnown(
                    path + "/crop/family",
                    "family %s",
                    crop.family(),
                    book.families().stream().map(Family::name).toList(),
                    "/families/*/name");
        }
        if (!crop.figures().isEmpty()
                || crop.methods().stream().anyMatch(method -> !method.figures().isEmpty())) {
            flaws.add(
                    path + "/crop",
                    "In the book what figures rest on stands as \"evidence\" beside the crop, not as \"figures\" in it."
                            + " Move it there.");
        }
        List<String> methods = crop.methods().stream().map(Method::name).toList();
        for (int i = 0; i < entry.evidence().size(); i++) {
            evidence(path + "/evidence/" + i, entry.evidence().get(i), methods);
        }
        Set<String> told = new LinkedHashSet<>();
        for (BookFigures.Given given : BookFigures.of(BookFigures.figured(book, entry))) {
            String whose = given.method() == null ? "the crop" : "the method " + Words.quoted(given.method());
            if (given.figure() == null && told.add(whose + given.key())) {
                flaws.add(
                        path + "/evidence",
                        "Nothing says where " + Words.quoted(given.key()) + " of " + whose + " of "
                                + Words.quoted(crop.name()) + " comes from and how sure it is. Add it to the"
                                + " \"evidence\".",
                        path + "/crop");
            }
        }
    }

    private void evidence(String path, Evidence evidence, List<String> methods) {
        for (int i = 0; i < evidence.of().size(); i++) {
            flaws.unlessKnown(
                    path + "/of/" + i,
                    "key %s of crops or methods",
                    evidence.of().get(i),
                    CropCheck.FIGURES);
        }
        for (int i = 0; i < evidence.methods().size(); i++) {
            flaws.unlessKnown(
                    path + "/methods/" + i, "method %s here", evidence.methods().get(i), methods);
        }
        source(path, evidence.figure());
    }

    /** What is published or remembered begins with the name of a source: with one that was seen if it is published. */
    private void source(String path, Figure figure) {
        String source = String.valueOf(figure.source());
        if (figure.from() == Origin.PUBLISHED && begins(source).noneMatch(s -> s.known() != Source.Known.MEMORY)) {
            flaws.add(
                    path + "/source",
                    "This is called published, but " + Words.quoted(source) + " does not begin with the name of one of"
                            + " the book's \"sources\" that was seen. Name it there, or call the figure a memory or an"
                            + " assumption.",
                    "/sources/*/name");
        }
        if (figure.from() == Origin.MEMORY && begins(source).findAny().isEmpty()) {
            flaws.add(
                    path + "/source",
                    "This is called a memory, but " + Words.quoted(source)
                            + " does not begin with the name of one of the"
                            + " book's \"sources\". Say there of what it is a memory, or call the figure an assumption.",
                    "/sources/*/name");
        }
        if (figure.from() == Origin.OWN) {
            flaws.add(path + "/from", "Figures of the book are nobody's \"own\". Say what they rest on.");
        }
    }

    private Stream<Source> begins(String source) {
        return book.sources().stream().filter(s -> source.startsWith(s.name()));
    }
}
