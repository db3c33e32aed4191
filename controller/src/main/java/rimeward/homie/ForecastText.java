package rimeward.homie;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.json.Json;

/** A forecast that is handed over: some hours of the coming night as JSON, and the night that they make. */
final class ForecastText {
    /** A night by the quarter of an hour is shorter, bytes. */
    static final int MOST_BYTES = 8192;

    private static final int MOST_POINTS = 100;

    /** An older one has been overtaken, s. Own choice. */
    private static final long OLDEST_S = 6 * 3600;

    /** The sender's clock may be ahead of ours by this, s. Own choice. */
    private static final long AHEAD_S = 600;

    /** What is asked for, as a JSON Schema. */
    static final String SCHEMA =
            "{\"type\":\"object\",\"additionalProperties\":false,\"required\":[\"issued\",\"spreadK\",\"points\"],"
                    + "\"properties\":{\"issued\":{\"type\":\"string\",\"format\":\"date-time\"},"
                    + "\"spreadK\":{\"type\":\"number\",\"minimum\":0,\"maximum\":20},"
                    + "\"points\":{\"type\":\"array\",\"minItems\":1,\"maxItems\":" + MOST_POINTS
                    + ",\"items\":{\"type\":\"object\","
                    + "\"additionalProperties\":false,\"required\":[\"at\",\"outsideC\"],\"properties\":{"
                    + "\"at\":{\"type\":\"string\",\"format\":\"date-time\"},"
                    + "\"outsideC\":{\"type\":\"number\",\"minimum\":-60,\"maximum\":40}}}}}}";

    private ForecastText() {}

    /**
     * The night from now to the last point; its number is when the forecast was issued, s since 1970.
     *
     * @param lastIssuedS the one taken before, so that none comes twice
     */
    static Outlook.Night read(String text, WallTime now, long lastIssuedS) throws Misheard {
        if (!now.trusted()) {
            throw new Misheard("the controller's clock is not set yet, so the forecast's hours mean nothing to it");
        }
        Json json = Payload.json(text);
        only(json, "issued", "spreadK", "points");
        long nowS = now.epochS();
        long issuedS = time(json, "issued");
        if (issuedS <= lastIssuedS) {
            throw new Misheard("one issued at that time or later was taken before");
        }
        if (issuedS < nowS - OLDEST_S || issuedS > nowS + AHEAD_S) {
            throw new Misheard("it was issued more than 6 h ago, or later than now");
        }
        double lowestC = Double.POSITIVE_INFINITY;
        long endS = nowS;
        if (!(json.get("points").orElse(json) instanceof Json.Elements points)
                || points.each().isEmpty()
                || points.each().size() > MOST_POINTS) {
            throw new Misheard("points must be a list of 1 to " + MOST_POINTS);
        }
        for (Json point : points.each()) {
            only(point, "at", "outsideC");
            long atS = time(point, "at");
            double outsideC = number(point, "outsideC");
            endS = Math.max(endS, atS);
            lowestC = atS >= nowS - 3600 ? StrictMath.min(lowestC, outsideC) : lowestC;
        }
        return night(issuedS, lowestC, number(json, "spreadK"), endS - nowS);
    }

    private static Outlook.Night night(long issuedS, double lowestC, double spreadK, long endsInS) throws Misheard {
        if (endsInS <= 0) {
            throw new Misheard("all its points lie in the past");
        }
        try {
            return new Outlook.Night(issuedS, lowestC, spreadK, endsInS);
        } catch (IllegalArgumentException e) {
            throw new Misheard(String.valueOf(e.getMessage()));
        }
    }

    private static void only(Json json, String... names) throws Misheard {
        for (String name : json.names()) {
            if (!List.of(names).contains(name)) {
                throw new Misheard("it has a member " + Payload.shown(name) + " that means nothing here");
            }
        }
    }

    private static double number(Json json, String name) throws Misheard {
        if (json.get(name).orElse(json) instanceof Json.Figure number) {
            return number.value();
        }
        throw new Misheard(name + " must be a number");
    }

    private static long time(Json json, String name) throws Misheard {
        if (json.get(name).orElse(json) instanceof Json.Text text && text.text().length() <= 40) {
            try {
                return Instant.parse(text.text()).getEpochSecond();
            } catch (DateTimeException e) {
                throw new Misheard(name + " must be a time by RFC 3339 in UTC, such as 2026-01-10T15:00:00Z");
            }
        }
        throw new Misheard(name + " is missing");
    }
}
