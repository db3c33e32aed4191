package rimeward.alert;

import java.util.OptionalDouble;
import rimeward.core.Outcome;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Outside;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Delivery;
import rimeward.site.Site;

/** What a tired person reads at three in the morning: what is wrong, how bad, and the one thing to do. */
final class AlertText {
    private AlertText() {}

    static String of(Site site, Watches watches, AlertKind kind, String subject, Alert.Change change, Outcome outcome) {
        return switch (change) {
            case RAISED -> stands(site, watches, kind, subject, outcome);
            case REPEATED -> "Still: " + stands(site, watches, kind, subject, outcome);
            case ACKNOWLEDGED -> kind.title() + " (" + subject + "): somebody knows.";
            case CLEARED -> cleared(site, kind, subject, outcome);
        };
    }

    private static String stands(Site site, Watches watches, AlertKind kind, String subject, Outcome outcome) {
        return switch (kind) {
            case FLOOR_CROSSED ->
                "The coldest bench is " + belowFloor(site, outcome) + reckoned(outcome)
                        + ". Cover the plants or bring in heat now.";
            case HEAT_NOT_ARRIVING ->
                subject + " is switched on but gives no heat. Coldest bench " + coldest(site, outcome)
                        + ", floor " + site.degrees().text(site.floorC()) + timeLeft(site, outcome)
                        + ". Check its plug, fuse, RCD and dial. " + others(site, outcome);
            case RELAY_WELDED ->
                subject + " is switched off but still draws power or warms the air. Its relay may be"
                        + " welded: unplug it.";
            case TOO_HOT ->
                tooHot(site.degrees().text(site.targets().hotC()), outcome)
                        + ", so no heater may run although heat is needed. Look for a misplaced sensor.";
            case BLIND ->
                "No inside temperature can be believed. The heater runs by the outside temperature (seen, forecast or"
                        + " the coldest of late) and the tunnel's heat loss until one returns. Check the sensors' cable.";
            case SENSOR_LOST, SENSOR_DOUBTED, SENSORS_DISAGREE ->
                SensorText.of(site, kind, subject, outcome.judgement());
            case DRYER_NOT_DRYING ->
                "The dryer was switched on for an hour and the air is no drier. It rests half an hour and is"
                        + " tried again. Check its plug, tank, filter, coil and its own humidistat.";
            case AIRING -> AiringAdvice.open(outcome.judgement());
            case LAW_FAILED ->
                "The control law in use fails. The guard holds the floor alone, and nothing dries the air. Go back"
                        + " to Rimeward's own law, and tell whoever wrote this one.";
            case TANK_FULL -> "The dryer's tank is full and the dryer rests. Empty it.";
            case SERVICE_RESTARTED ->
                "The controller's program ended and has started again. Rest times were kept. If this comes again,"
                        + " look at its log.";
            case DOOR_FAILED -> Door.of(subject).advice();
            case RECORD_SET_ASIDE ->
                "The file of the record was damaged. It was renamed and a new one was begun; control went on."
                        + " If it comes again, replace the memory card.";
            case CLOCK_JUMPED ->
                "The time of day jumped. Control does not use it, but times in the record are not to be trusted."
                        + " Check the network.";
            case TICKS_LATE ->
                "A decision came more than a beat late. The relays stayed as they were meanwhile. Something else"
                        + " may be using the computer.";
            case FROST_RISK -> watches.frost().text(site, watches.model(), outcome);
            case EXTRA_LOSS ->
                "The tunnel suddenly loses far more heat than it should. Coldest bench " + coldest(site, outcome)
                        + ". Look whether a door is open or the cover is torn, and whether the heater is warm.";
            case HEAT_LOSS_ROSE, HEAT_LOSS_FELL -> watches.loss().text(site);
            case DOOR_OPEN ->
                "The door has stood open for a quarter of an hour or more and it is cold outside. Coldest bench "
                        + coldest(site, outcome) + ". Close it.";
            case TOO_WET -> watches.mould().text(site.degrees());
            case TANK_NEARLY_FULL -> watches.tank().text(site);
            case UNDER_VOLTAGE ->
                "The controller's computer gets too low a voltage and may stop at any time. Give it its own power supply"
                        + " and a short, thick cable.";
            case DISK_NEARLY_FULL ->
                "The memory card is nearly full. Control goes on; soon nothing can be written down any more. Make room on it.";
            case CLOCK_NEVER_SET ->
                "For an hour nobody has told the computer the time of day. Control does not need it, but prices, nights and"
                        + " times in the record may be wrong. Check the network.";
            case POWER_WAS_CUT ->
                "The power was cut for " + length(outcome.outageS()) + ". Coldest bench now " + coldest(site, outcome)
                        + afterCut(site, outcome) + " The machines start one after another.";
        };
    }

    private static String cleared(Site site, AlertKind kind, String subject, Outcome outcome) {
        return switch (kind) {
            case AIRING -> AiringAdvice.close(site, outcome.judgement());
            case HEAT_NOT_ARRIVING ->
                subject
                        + (gives(site, subject, outcome)
                                ? " gives heat again."
                                : " is no longer suspected: it gave heat, or for two hours nobody could see.");
            case DRYER_NOT_DRYING -> "The dryer dries again, or has not been needed for two hours.";
            case HEAT_LOSS_ROSE, HEAT_LOSS_FELL ->
                kind.title() + ": it loses what it used to again, or another change is told, or after three weeks it"
                        + " is taken as usual.";
            case POWER_WAS_CUT, SERVICE_RESTARTED, RECORD_SET_ASIDE -> kind.title() + ": known, or shown long enough.";
            default -> kind.title() + ": over (" + subject + ").";
        };
    }

    private static boolean gives(Site site, String machine, Outcome outcome) {
        int place = site.machineIds().indexOf(machine);
        return place >= 0 && outcome.deliveries().of(place) == Delivery.GIVING;
    }

    /** Near the floor the figures, rounded, would be the same. */
    private static String belowFloor(Site site, Outcome outcome) {
        String floor = site.degrees().text(site.floorC());
        String coldest = coldest(site, outcome);
        return coldest.equals(floor) ? "just below the floor of " + floor : "at " + coldest + "; the floor is " + floor;
    }

    /** Said where the coldest bench is known by the others only. */
    private static String reckoned(Outcome outcome) {
        boolean reckoned = outcome.judgement().inside() instanceof Inside.Seen seen
                && !outcome.judgement().airVerdicts().get(seen.coldestSensor()).isTrusted();
        return reckoned ? ", reckoned from the others (its own sensor is not believed)" : "";
    }

    private static String tooHot(String limit, Outcome outcome) {
        return outcome.judgement().inside() instanceof Inside.Seen
                ? "The air has reached the hot limit (" + limit + ") and has not cooled clear of it"
                : "A sensor that is not believed reads above the hot limit (" + limit + "), and no other is believed";
    }

    private static String others(Site site, Outcome outcome) {
        long left = 0;
        for (int i = 0; i < site.machines().size(); i++) {
            boolean sound = !outcome.deliveries().failed().has(i)
                    && outcome.deliveries().of(i) != Delivery.NOT_GIVING;
            left += sound && site.machines().get(i).role().isHeatSource() ? 1 : 0;
        }
        return left > 0 ? "Whatever else can heat is tried while heat is needed." : "No other source of heat is left.";
    }

    /** Time until the floor if no heat came at all, where it is above and will be crossed. */
    private static String timeLeft(Site site, Outcome outcome) {
        if (outcome.judgement().inside() instanceof Inside.Seen inside
                && outcome.judgement().outside() instanceof Outside.Seen outside
                && inside.coldestC() > site.floorC()) {
            OptionalDouble leftS =
                    TunnelModel.assumed(site).floatsAboveS(inside.coldestC(), site.floorC(), outside.airC());
            if (leftS.isPresent()) {
                return ", reached in about " + Math.max(1, Math.round(leftS.getAsDouble() / 60))
                        + " minutes without heat";
            }
        }
        return "";
    }

    /** Nobody measured in the dark, and the air is coldest at its end unless the sun came. */
    private static String afterCut(Site site, Outcome outcome) {
        if (!(outcome.judgement().inside() instanceof Inside.Seen seen)) {
            return ": look at the plants.";
        }
        return seen.coldestC() < site.floorC()
                ? ", below the floor of " + site.degrees().text(site.floorC()) + ": look at the plants."
                : ", above the floor of " + site.degrees().text(site.floorC())
                        + "; how cold it was in between nobody measured.";
    }

    private static String length(double lastsS) {
        if (lastsS < 120) {
            return Math.round(lastsS) + " seconds";
        }
        long minutes = Math.round(lastsS / 60);
        return minutes < 120 ? minutes + " minutes" : minutes / 60 + " hours " + minutes % 60 + " minutes";
    }

    private static String coldest(Site site, Outcome outcome) {
        return outcome.judgement().inside() instanceof Inside.Seen seen
                ? site.degrees().text(seen.coldestC())
                : "unknown";
    }
}
