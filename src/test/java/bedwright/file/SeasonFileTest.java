package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Caution;
import bedwright.season.Crop;
import bedwright.season.Season;
import bedwright.season.Site;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeasonFileTest {
    @Test
    void readsASeasonThatFitsOnAPage() {
        Season season = Resources.season("page.json");

        assertThat(season.starts()).isEqualTo(LocalDate.of(2027, 3, 1));
        assertThat(season.site().meanMin()).startsWith(-2.0, -1.5).hasSize(12);
        assertThat(season.beds().get(0).count()).isEqualTo(2);
        assertThat(season.crops().get(0).methods().get(0).sowFrom()).isEqualTo(MonthDay.of(4, 15));
        assertThat(season.crops().get(0).methods().get(0).cutShares()).containsExactly(0.6, 0.4);
    }

    @Test
    void fillsInWhatIsLeftOut() {
        Season season = Resources.season("page.json");

        assertThat(season.caution()).isEqualTo(Caution.STEADY);
        assertThat(season.currency().sign()).isEqualTo("€");
        assertThat(season.beds().get(0).width()).isEqualTo(1.2);
        assertThat(season.beds().get(0).tunnel()).isNull();
        assertThat(season.crops().get(0).clock().convention()).isEqualTo(Crop.Convention.SINE);
        assertThat(season.crops().get(0).clock().upper()).isNull();
        assertThat(season.site().spread()).isEqualTo(new Site.TemperatureSpread(0.8, 3.2, 0.8));
        assertThat(season.standing()).isEqualTo(List.of());
        assertThat(season.possible().count()).isEqualTo(16);
        assertThat(season.possible().doubt().stems().weak()).isEqualTo(0.35);
    }
}
