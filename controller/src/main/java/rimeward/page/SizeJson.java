package rimeward.page;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import rimeward.json.JsonText;
import rimeward.site.Circuit;
import rimeward.site.Tunnel;
import rimeward.sizing.Areas;
import rimeward.sizing.Cautions;
import rimeward.sizing.Gain;
import rimeward.sizing.HeaterPlan;
import rimeward.sizing.Loss;
import rimeward.sizing.Measure;
import rimeward.sizing.Saving;
import rimeward.sizing.Season;
import rimeward.sizing.Sheet;
import rimeward.sizing.Sourced;
import rimeward.sizing.Stages;
import rimeward.sizing.Winter;

/** The heat-loss sheet for programs, in one line. A member that is not known is left out, never 0. */
public final class SizeJson {
    private final Sheet sheet;
    private final boolean winter;

    private SizeJson(Sheet sheet) {
        this.sheet = sheet;
        winter = sheet.winter() instanceof Winter.Known known && known.season().isWinter();
    }

    public static String of(Sheet sheet) {
        return JsonText.of(map(sheet)) + "\n";
    }

    static Map<String, Object> map(Sheet sheet) {
        return new SizeJson(sheet).whole();
    }

    private Map<String, Object> whole() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("inputs", inputs());
        all.put("assumed_inputs", sheet.assumed());
        all.put("currency", sheet.request().tariff().currency());
        all.put(
                "insulation",
                sheet.request().done().stream().sorted().map(Measure::word).toList());
        all.put("areas", areas(sheet.house().areas()));
        all.put("loss", loss(sheet.loss()));
        all.put("heater", heater());
        all.put("circuit", circuit(sheet.heater()));
        if (sheet.winter() instanceof Winter.Known known) {
            all.put("season", season(known));
        }
        if (sheet.winter() instanceof Winter.Recorded recorded) {
            all.put("recorded", recorded(recorded));
        }
        all.put("measures", sheet.savings().stream().map(this::saving).toList());
        all.put("tunnel_settings", tunnel(sheet.tunnel()));
        all.put("cautions", Cautions.HEATER);
        return all;
    }

    private Map<String, Object> inputs() {
        Map<String, Object> inputs = new LinkedHashMap<>();
        sheet.request().inputs().each().forEach((input, number) -> inputs.put(input.key(), sourced(number)));
        return inputs;
    }

    private static Map<String, Object> sourced(Sourced number) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("value", BigDecimal.valueOf(number.value()));
        told.put("basis", number.basis().name().toLowerCase(Locale.ROOT));
        told.put("from", number.from());
        return told;
    }

    private static Map<String, Object> areas(Areas areas) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("roof_and_sides_m2", areas.roofAndSidesM2());
        told.put("ends_m2", areas.endsM2());
        told.put("floor_m2", areas.floorM2());
        told.put("edge_m", areas.edgeM());
        told.put("volume_m3", areas.volumeM3());
        return told;
    }

    private static Map<String, Object> loss(Loss loss) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("roof_and_sides_W_per_K", loss.roofAndSidesWPerK());
        told.put("ends_W_per_K", loss.endsWPerK());
        told.put("draughts_W_per_K", loss.draughtsWPerK());
        told.put("ground_edge_W_per_K", loss.edgeWPerK());
        told.put("total_W_per_K", loss.totalWPerK());
        return told;
    }

    private Map<String, Object> heater() {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("held_C", sheet.request().heldC());
        told.put("needed_W", sheet.neededW());
        told.put("with_margin_W", sheet.heater().wantedW());
        stages(told, "stages_to_buy", sheet.heater().wanted());
        return told;
    }

    private Map<String, Object> circuit(HeaterPlan plan) {
        Circuit circuit = plan.circuit();
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("continuous_limit_W", circuit.limitW());
        told.put("plug_continuous_W", HeaterPlan.plugW(circuit));
        told.put("fits", plan.fits());
        stages(told, "stages_that_fit", plan.fitting());
        stages(told, "most_that_fits", plan.most());
        plan.breakerA().ifPresent(breakerA -> told.put("breaker_needed_A", breakerA));
        return told;
    }

    private void stages(Map<String, Object> into, String name, Stages stages) {
        if (stages instanceof Stages.Some some) {
            Map<String, Object> told = new LinkedHashMap<>();
            told.put("each_W", some.eachW());
            told.put("total_W", some.totalW());
            told.put("holds_down_to_outside_C", sheet.holdsDownToC(some.totalW()));
            into.put(name, told);
        }
    }

    private Map<String, Object> season(Winter.Known known) {
        Season season = known.season();
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("file", known.file());
        told.put("form", known.weather().form().name().toLowerCase(Locale.ROOT));
        told.put("days", season.days());
        told.put("is_winter", season.isWinter());
        told.put("rows_unmeasured", known.weather().unmeasured());
        told.put("rows_impossible", known.weather().impossible());
        told.put("gaps_h", season.missingH());
        told.put("lowest_C", season.lowestC());
        told.put("lowest_at", Instant.ofEpochSecond(season.lowestEpochS()).toString());
        told.put("degree_hours_below_floor_K_h", season.belowFloorKh());
        told.put("degree_hours_below_held_K_h", season.belowHeldKh());
        told.put("heat_kWh", season.kWh(sheet.loss().totalWPerK()));
        told.put("cost_money", season.cost(sheet.loss().totalWPerK()));
        return told;
    }

    private static Map<String, Object> recorded(Winter.Recorded recorded) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("nights", recorded.nights());
        told.put("heat_kWh", recorded.kWh());
        told.put("cost_money", recorded.money());
        return told;
    }

    private Map<String, Object> saving(Saving saving) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("insulation", saving.measure().word());
        told.put("what", saving.measure().words());
        told.put("from", saving.measure().source());
        told.put(saving.measure().isByArea() ? "amount_m2" : "amount_m", saving.amount());
        told.put("cost_money", saving.cost());
        told.put("loss_after_W_per_K", saving.after().totalWPerK());
        told.put("heater_after_W", saving.heater().wantedW());
        told.put("fits_circuit", saving.heater().fits());
        if (saving.gain() instanceof Gain.Known gain) {
            told.put("saved_kWh", gain.kWh());
            told.put("saved_money", gain.money());
            gain.paysBackAfter().ifPresent(after -> told.put(winter ? "payback_winters" : "payback_spells", after));
        }
        return told;
    }

    private static Map<String, Object> tunnel(Tunnel tunnel) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("floor_area_m2", tunnel.floorAreaM2());
        told.put("volume_m3", tunnel.volumeM3());
        told.put("altitude_m", tunnel.altitudeM());
        told.put("heat_loss_W_per_K", tunnel.heatLossWPerK());
        told.put("air_capacity_J_per_K", tunnel.airCapacityJPerK());
        told.put("mass_capacity_J_per_K", tunnel.massCapacityJPerK());
        told.put("mass_coupling_W_per_K", tunnel.massCouplingWPerK());
        told.put("film_fraction", tunnel.filmFraction());
        return told;
    }
}
