package rimeward.app;

import java.util.Locale;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.site.Attached;
import rimeward.site.Contact;
import rimeward.site.Drying;
import rimeward.site.Meter;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** What each sensor says now, and what is wrong with it in words. */
final class LiveSheet {
    private static final String NOWHERE = "attached to nothing in the settings";

    private final Site site;
    private final Senses senses;
    private final StringBuilder text = new StringBuilder();

    private LiveSheet(Site site, Senses senses) {
        this.site = site;
        this.senses = senses;
    }

    static String of(Site site, Senses senses) {
        LiveSheet sheet = new LiveSheet(site, senses);
        sheet.text.append("Readings now\n");
        for (int i = 0; i < site.sensors().size(); i++) {
            sheet.line(site.sensors().get(i).id(), sheet.sensor(i));
        }
        for (int i = 0; i < site.machines().size(); i++) {
            Meter meter = site.machines().get(i).meter();
            if (meter.isFitted()) {
                boolean isThere = !(meter instanceof Meter.NotAttached);
                sheet.line(
                        site.machines().get(i).id(),
                        isThere ? number(senses.powersW().get(i), "W") : NOWHERE);
            }
        }
        if (site.drying() instanceof Drying.Dryer dryer) {
            sheet.contact("tank float", dryer.tankFloat(), senses.tankFull(), "full", "not full");
        }
        sheet.contact("door", site.door(), senses.doorOpen(), "open", "shut");
        return sheet.text.toString();
    }

    /** Whether every sensor that hangs somewhere gives a number. */
    static boolean isSound(Site site, Senses senses) {
        for (int i = 0; i < site.sensors().size(); i++) {
            SensorReading said = senses.sensors().get(i);
            if (isRead(site.sensors().get(i))
                    && (said.airC() instanceof Reading.Lost || said.rhPercent() instanceof Reading.Lost)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isRead(Sensor sensor) {
        return !(sensor.attached() instanceof Attached.NotAttached)
                && !(sensor.attached() instanceof Attached.HandedIn);
    }

    private String sensor(int index) {
        Sensor sensor = site.sensors().get(index);
        SensorReading said = senses.sensors().get(index);
        if (!isRead(sensor)) {
            return sensor.attached() instanceof Attached.HandedIn at
                    ? "handed in under " + at.topic() + ", not looked at here"
                    : NOWHERE;
        }
        String air = number(said.airC(), "°C") + plausible(sensor, said.airC());
        return said.rhPercent() instanceof Reading.NotFitted ? air : air + "   " + number(said.rhPercent(), "%");
    }

    private static String plausible(Sensor sensor, Reading airC) {
        boolean odd = airC instanceof Reading.Value air
                && (air.value() < sensor.limits().leastC()
                        || air.value() > sensor.limits().mostC());
        return odd ? " (outside what its settings call sound)" : "";
    }

    private static String number(Reading reading, String unit) {
        if (reading instanceof Reading.Value value) {
            return String.format(Locale.ROOT, "%6.1f %s, %.0f s old", value.value(), unit, value.ageS());
        }
        return reading instanceof Reading.Lost lost ? why(lost.why()) : "not fitted";
    }

    private static String why(Loss loss) {
        return switch (loss) {
            case NO_ANSWER -> "NO ANSWER: look at its plug, its cable, its bus, and whether you may read it (sudo)";
            case BAD_CHECKSUM -> "WRONG CHECKSUM: a disturbed or too long cable, or another chip than the settings say";
            case FAULT_VALUE -> "A FAULT'S VALUE: it answers, but has not measured; look at its supply, try another";
        };
    }

    private void contact(String name, Contact contact, Signal signal, String on, String off) {
        if (contact.isFitted()) {
            String said = switch (signal) {
                case NOT_FITTED, LOST -> "NO ANSWER: look at its line in the settings";
                case OFF -> off;
                case ON -> on;
            };
            line(name, contact instanceof Contact.NotAttached ? NOWHERE : said);
        }
    }

    private void line(String name, String said) {
        text.append(String.format(Locale.ROOT, "  %-14s %s\n", name, said));
    }
}
