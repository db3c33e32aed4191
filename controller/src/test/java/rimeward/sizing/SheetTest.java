package rimeward.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rimeward.site.Tariff;

class SheetTest {

    private static Inputs inputs() {
        Inputs inputs = new Inputs(Naming.OPTIONS);
        inputs.given(Input.WIDTH, "4");
        inputs.given(Input.LENGTH, "6");
        inputs.given(Input.HEIGHT, "2");
        inputs.given(Input.COVER_LOSS, "6.8");
        inputs.given(Input.ENDS_LOSS, "6.8");
        return inputs;
    }

    private static Request request(Inputs inputs, Set<Measure> done) {
        inputs.assumeTheRest();
        return new Request(
                inputs, Cover.SINGLE_FILM, Cover.SINGLE_FILM, done, new Tariff.Flat("GBP", 0.5), ZoneOffset.UTC);
    }

    private static Saving saving(Sheet sheet, Measure measure) {
        return sheet.savings().stream()
                .filter(one -> one.measure() == measure)
                .findFirst()
                .orElseThrow();
    }

    /** Exactly 1000 K·h below 5 °C: 100 days at 5 °C but for 100 hours at −5 °C. */
    private static Weather weather() {
        AirCourse course = new AirCourse();
        for (int hour = 0; hour <= 2400; hour++) {
            course.add(3600L * hour, hour >= 100 && hour < 200 ? -5 : 5); // its flanks are half a step each
        }
        return new Weather(course, Weather.Form.READINGS, 0, 0);
    }

    @Test
    void partsMakeTheWhole() throws Refused {
        Sheet sheet = Sheet.of(request(inputs(), Set.of()), new Winter.Unknown());
        Loss loss = sheet.loss();
        assertThat(loss.roofAndSidesWPerK()).isCloseTo(12 * StrictMath.PI * 6.8, within(1e-9));
        assertThat(loss.edgeWPerK()).isCloseTo(20 * 1.38, within(1e-9));
        // Dry air of 5 °C at sea level: 1.269 kg/m³ (ideal gas), × 1006 J/kgK / 3600 = 0.3546 Wh/m³K.
        assertThat(loss.draughtsWPerK()).isCloseTo(12 * StrictMath.PI * 1.5 * 0.3546, within(0.02));
        assertThat(sheet.neededW()).isCloseTo(15 * loss.totalWPerK(), within(1e-9));
        assertThat(sheet.heater().wantedW()).isCloseTo(1.25 * sheet.neededW(), within(1e-9));
        assertThat(sheet.holdsDownToC(sheet.neededW())).isCloseTo(-10, within(1e-9));
    }

    @Test
    void paybackIsCostOverWhatIsSaved() throws Refused {
        Sheet sheet = Sheet.of(request(inputs(), Set.of()), "made.csv", weather());
        assertThat(sheet.winter()).isInstanceOfSatisfying(Winter.Known.class, known -> {
            assertThat(known.season().isWinter()).isTrue();
            assertThat(known.season().belowHeldKh()).isCloseTo(1000, within(1e-6));
        });
        Saving lining = saving(sheet, Measure.BUBBLE_LINING);
        double savedWPerK = 12 * StrictMath.PI * (6.8 - 3.6); // single film becomes lined film
        assertThat(sheet.loss().totalWPerK() - lining.after().totalWPerK()).isCloseTo(savedWPerK, within(1e-9));
        assertThat(lining.gain()).isInstanceOfSatisfying(Gain.Known.class, gain -> {
            assertThat(gain.kWh()).isCloseTo(savedWPerK, within(1e-6)); // × 1000 K·h / 1000
            assertThat(gain.money()).isCloseTo(savedWPerK * 0.5, within(1e-6));
            assertThat(gain.paysBackAfter().orElseThrow())
                    .isCloseTo(12 * StrictMath.PI * 2.5 / (savedWPerK * 0.5), within(1e-6));
        });
    }

    @Test
    void whatSavesNoMoneyNeverPaysBack() {
        assertThat(new Gain.Known(10, 0, 5).paysBackAfter()).isEmpty();
        assertThat(new Gain.Known(10, -1, 5).paysBackAfter()).isEmpty();
    }

    @Test
    void withoutWeatherNothingIsSaidOfMoney() throws Refused {
        Sheet sheet = Sheet.of(request(inputs(), Set.of()), new Winter.Unknown());
        assertThat(sheet.winter()).isEqualTo(new Winter.Unknown());
        assertThat(sheet.savings()).allMatch(saving -> saving.gain() instanceof Gain.Unknown);
    }

    @Test
    void aMeasureThatIsDoneIsCountedAndNoLongerOffered() throws Refused {
        Sheet bare = Sheet.of(request(inputs(), Set.of()), new Winter.Unknown());
        for (Measure measure : EnumSet.allOf(Measure.class)) {
            Sheet done = Sheet.of(request(inputs(), Set.of(measure)), new Winter.Unknown());
            assertThat(done.loss()).isEqualTo(saving(bare, measure).after());
            assertThat(done.loss().totalWPerK()).isLessThan(bare.loss().totalWPerK());
            assertThat(done.savings()).noneMatch(saving -> saving.measure() == measure);
        }
    }

    @Test
    void togetherMeasuresSaveLessThanTheSum() throws Refused {
        double bare = Sheet.of(request(inputs(), Set.of()), new Winter.Unknown())
                .loss()
                .totalWPerK();
        double lined = Sheet.of(request(inputs(), Set.of(Measure.BUBBLE_LINING)), new Winter.Unknown())
                .loss()
                .totalWPerK();
        double second = Sheet.of(request(inputs(), Set.of(Measure.SECOND_FILM)), new Winter.Unknown())
                .loss()
                .totalWPerK();
        double both = Sheet.of(
                        request(inputs(), Set.of(Measure.SECOND_FILM, Measure.BUBBLE_LINING)), new Winter.Unknown())
                .loss()
                .totalWPerK();
        assertThat(both).isLessThan(Math.min(lined, second));
        assertThat(bare - both).isLessThan(bare - lined + bare - second);
    }

    @Test
    void theSettingsLinesGoByTheSheet() throws Refused {
        Sheet sheet = Sheet.of(request(inputs(), Set.of()), new Winter.Unknown());
        assertThat(sheet.tunnel().heatLossWPerK()).isCloseTo(sheet.loss().totalWPerK(), within(0.5));
        assertThat(sheet.tunnel().floorAreaM2()).isEqualTo(24);
        assertThat(sheet.tunnel().massCapacityJPerK()).isEqualTo(4_000_000);
        assertThat(sheet.tunnel().filmFraction()).isCloseTo(0.32, within(1e-9));
    }

    @Test
    void contradictionsAreAllTold() {
        Inputs inputs = inputs();
        inputs.given(Input.EAVES, "2.5");
        inputs.given(Input.OUTSIDE, "5");
        inputs.given(Input.OTHER_LOAD, "2392");
        assertThatThrownBy(() -> Sheet.of(request(inputs, Set.of()), new Winter.Unknown()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining(
                        "--eaves-m is 2.5 and --height-m is 2; the ridge must be higher than the eaves: measure")
                .hasMessageContaining("--outside-C is 5 (given); it must lie below the 5 °C that are held")
                .hasMessageContaining("--other-load-W is 2392; that leaves nothing");
    }

    @Test
    void numbersBeyondTheirLimitsNameTheLimit() {
        Inputs inputs = inputs();
        inputs.given(Input.FUSE, "500");
        inputs.given(Input.FLOOR, "4,5");
        inputs.given(Input.MARGIN, "NaN");
        assertThatThrownBy(inputs::throwIfRefused)
                .hasMessageContaining("--fuse-A is 500 (given); it must lie between 1 and 125 A: what is printed on")
                .hasMessageContaining("--floor-C is \"4,5\", which is no number; write digits with a point")
                .hasMessageContaining("--margin-percent is \"NaN\"");
    }
}
