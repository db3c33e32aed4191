package rimeward.app;

import java.util.ArrayList;
import java.util.List;
import rimeward.site.Attached;
import rimeward.site.Drying;
import rimeward.site.Forecasting;
import rimeward.site.Machine;
import rimeward.site.Messaging;
import rimeward.site.RelaySet;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** What settings may say but a careful grower would not. Limits without a source are common practice. */
final class SiteAdvice {
    /** A bubble-lined film tunnel of 19 m² held 7 K above outside by 1 kW loses 7.5 (common practice, no source). */
    private static final double LEAST_LOSS_W_PER_K_M2 = 2;

    private static final double MOST_LOSS_W_PER_K_M2 = 20;
    private static final double LEAST_HEIGHT_M = 1;
    private static final double MOST_HEIGHT_M = 6;

    private final List<String> advice = new ArrayList<>();
    private final Site site;

    private SiteAdvice(Site site) {
        this.site = site;
    }

    static List<String> of(Site site) {
        SiteAdvice all = new SiteAdvice(site);
        all.load();
        all.sensors();
        all.heater();
        if (site.drying() instanceof Drying.Dryer dryer) {
            all.dryer(dryer);
        }
        all.advice.addAll(WiringAdvice.of(site));
        all.tunnel();
        all.forecast();
        return all.advice;
    }

    private void load() {
        Capacity capacity = Capacity.of(site);
        double limitW = capacity.limitW();
        if (site.heater().ratedW() > limitW) {
            say("the heater's stages together draw "
                    + Plain.number(site.heater().ratedW()) + " W and the circuit carries "
                    + Plain.number(limitW) + " W: they never all run, and only " + Plain.number(capacity.heaterW())
                    + " W count");
        } else if (capacity.allW() > limitW) {
            say("the summed load of " + Plain.number(capacity.allW()) + " W is above the " + Plain.number(limitW)
                    + " W of the circuit: when all would run, " + firstShed() + " off first");
        }
    }

    private String firstShed() {
        RelaySet warm = site.heaterStages().or(site.dryerRelay());
        boolean fanIsEnough = site.ratedW(warm) <= site.circuit().limitW();
        return fanIsEnough ? "the vent fan goes" : "in the cold the dryer goes";
    }

    private void sensors() {
        List<Sensor> inside = site.sensors().stream()
                .filter(sensor -> sensor.place().isInside())
                .toList();
        if (inside.size() == 1) {
            say(
                    "there is one inside sensor only: when it fails or lies, control is blind; hang a second one in the coldest place");
        }
        if (inside.size() == site.sensors().size()) {
            say("no sensor hangs outside: capability, airing and running blind then rest on the forecast alone");
        }
        if (!(site.messaging() instanceof Messaging.Mqtt)
                && site.sensors().stream().anyMatch(sensor -> sensor.attached() instanceof Attached.HandedIn)) {
            say("readings are to be handed in, and no broker is named in [mqtt]: none will come");
        }
        if (site.drying() instanceof Drying.Dryer && inside.stream().noneMatch(Sensor::hasHumidity)) {
            say("no inside sensor reports humidity: the dryer can only run by the clock");
        }
    }

    private void heater() {
        List<Machine> stages = site.heater().stages();
        if (stages.size() == 1 && site.drying() instanceof Drying.NoDryer) {
            say("one heater stage is the only source of heat: when it fails, nothing takes over");
        }
        if (stages.stream().noneMatch(Machine::hasPowerFeedback)) {
            say("no heater stage has power feedback: a blown fuse shows only when the air stays cold, minutes later");
        }
    }

    private void dryer(Drying.Dryer dryer) {
        if (!dryer.machine().hasPowerFeedback()) {
            say(
                    "the dryer has no power feedback: when its own humidistat or float stops it, that shows only by the missing effect");
        }
        if (!dryer.hasTankFloat() && !Double.isInfinite(dryer.tankL())) {
            say("the controller does not see the dryer's tank float: a full tank shows only by the missing effect");
        }
        double onC = site.floorC() + site.targets().guardMarginK();
        if (dryer.minimumAirC() > onC) {
            say("the dryer is locked out below " + Plain.number(dryer.minimumAirC())
                    + " °C, above where the floor is held (" + Plain.number(onC)
                    + " °C): on cold nights nothing dries the air");
        }
    }

    private void tunnel() {
        double areaM2 = site.tunnel().floorAreaM2();
        double heightM = site.tunnel().volumeM3() / areaM2;
        if (heightM < LEAST_HEIGHT_M || heightM > MOST_HEIGHT_M) {
            say("volume over floor area makes the tunnel " + Plain.number(heightM)
                    + " m high on average: check the two");
        }
        double lossWPerKM2 = site.tunnel().heatLossWPerK() / areaM2;
        if (lossWPerKM2 < LEAST_LOSS_W_PER_K_M2 || lossWPerKM2 > MOST_LOSS_W_PER_K_M2) {
            say("a heat loss of " + Plain.number(lossWPerKM2) + " W/K for each m² of floor is unusual for film (about "
                    + Plain.number(LEAST_LOSS_W_PER_K_M2) + " to " + Plain.number(MOST_LOSS_W_PER_K_M2)
                    + "): check it");
        }
    }

    /** No such address can be reached (RFC 2606), which the services' terms ask for. */
    private void forecast() {
        if (site.forecasting() instanceof Forecasting.FromService from
                && from.contact().matches(".*[.@]example(\\.(com|net|org))?")) {
            say("[forecast] contact is the example's, " + from.contact()
                    + ": write your own, or the service will shut you out");
        }
    }

    private void say(String line) {
        advice.add(line);
    }
}
