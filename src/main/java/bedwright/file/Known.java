package bedwright.file;

import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Method;
import bedwright.season.Pest;
import bedwright.season.Recipe;
import bedwright.season.Role;
import bedwright.season.Season;
import bedwright.season.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The names in a season that other places may refer to. */
final class Known {
    /** Where the names of kinds stand, five deep. */
    private static final String[] KIND_PATHS = {
        "/roles/*/name",
        "/roles/*/kinds/*/name",
        "/roles/*/kinds/*/kinds/*/name",
        "/roles/*/kinds/*/kinds/*/kinds/*/name",
        "/roles/*/kinds/*/kinds/*/kinds/*/kinds/*/name"
    };

    private final Season season;
    private final List<String> crops;
    private final List<String> kinds = new ArrayList<>();
    private final List<String> nets;
    private final List<String> pests;
    private final List<String> families;
    private final List<String> recipes;
    private final List<String> beds;

    Known(Season season) {
        this.season = season;
        crops = season.crops().stream().map(Crop::name).toList();
        nets = season.stock().nets().stream().map(Stock.Net::name).toList();
        pests = season.pests().stream().map(Pest::name).toList();
        families = season.families().stream().map(Family::name).toList();
        recipes = season.recipes().stream().map(Recipe::name).toList();
        beds = season.allBeds().stream().map(Bed::name).toList();
        for (Role role : season.roles()) {
            kinds.add(role.name());
            addKinds(role.name(), role.kinds());
        }
    }

    private void addKinds(String above, List<Role.Kind> within) {
        for (Role.Kind kind : within) {
            String path = above + "/" + kind.name();
            kinds.add(path);
            addKinds(path, kind.kinds());
        }
    }

    List<String> kinds() {
        return kinds;
    }

    List<String> beds() {
        return beds;
    }

    Optional<Crop> crop(String name) {
        return season.crops().stream().filter(c -> c.name().equals(name)).findFirst();
    }

    static Optional<Method> method(Crop crop, String name) {
        return crop.methods().stream().filter(m -> m.name().equals(name)).findFirst();
    }

    void checkCrop(Flaws flaws, String path, String name) {
        flaws.unlessKnown(path, "crop %s", name, crops, "/crops/*/name");
    }

    void checkKind(Flaws flaws, String path, String kind) {
        flaws.unlessKnown(path, "kind of stems %s", kind, kinds, KIND_PATHS);
    }

    void checkNet(Flaws flaws, String path, String name) {
        flaws.unlessKnown(path, "net %s", name, nets, "/stock/nets/*/name");
    }

    void checkPest(Flaws flaws, String path, String name) {
        flaws.unlessKnown(path, "pest %s", name, pests, "/pests/*/name");
    }

    void checkFamily(Flaws flaws, String path, String name) {
        flaws.unlessKnown(path, "family %s", name, families, "/families/*/name");
    }

    void checkRecipe(Flaws flaws, String path, String name) {
        flaws.unlessKnown(path, "recipe %s", name, recipes, "/recipes/*/name");
    }

    void checkBed(Flaws flaws, String path, String name) {
        flaws.unlessKnown(path, "bed %s", name, beds, "/beds/*/name", "/beds/*/count");
    }

    void checkMethod(Flaws flaws, String path, Crop crop, String name) {
        int at = crops.indexOf(crop.name());
        flaws.unlessKnown(
                path,
                "method %s of " + Words.quoted(crop.name()),
                name,
                crop.methods().stream().map(Method::name).toList(),
                "/crops/*/name",
                "/crops/" + at + "/methods/*/name");
    }
}
