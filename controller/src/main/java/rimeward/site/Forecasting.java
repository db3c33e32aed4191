package rimeward.site;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where forecasts of the weather come from. */
public sealed interface Forecasting {
    /** Nowhere: the night is told from this tunnel's own air. */
    record None() implements Forecasting {}

    /** A file that somebody else keeps up to date. */
    record FromFile(String file) implements Forecasting {
        public FromFile {
            Check.that(!file.isBlank(), "the forecast's file is empty");
        }
    }

    /**
     * A weather service that answers as MET Norway's Locationforecast 2.0 does (format: api.met.no/doc/ForecastJSON). It is told no more of the
     * place than {@link #coarseLatitudeDeg} and {@link #coarseLongitudeDeg}.
     *
     * @param url without the question that is put to it
     * @param latitudeDeg ° north of the equator
     * @param longitudeDeg ° east of Greenwich
     * @param contact e-mail or web address of whoever runs this: the service asks who is asking, and shuts out who does not say
     */
    record FromService(String url, double latitudeDeg, double longitudeDeg, String contact) implements Forecasting {
        /** Locationforecast's endpoint for most needs (api.met.no/doc/locationforecast/HowTO). */
        public static final String PUBLISHED_URL = "https://api.met.no/weatherapi/locationforecast/2.0/compact";

        private static final Pattern URL =
                Pattern.compile("(https?)://([A-Za-z0-9.-]+|\\[[0-9a-fA-F:.]+])(:\\d{1,5})?(/[A-Za-z0-9._~/-]*)?");
        private static final Pattern CONTACT = Pattern.compile("[!-~]*[A-Za-z0-9][@.][A-Za-z0-9][!-~]*");
        private static final int MOST_CONTACT = 100;

        public FromService {
            Check.that(
                    isSafe(url),
                    "the forecast's url is \"" + url
                            + "\"; it must begin with https:// and a host, and end with its path");
            Check.within("latitudeDeg", latitudeDeg, -90, 90);
            Check.within("longitudeDeg", longitudeDeg, -180, 180);
            Check.that(isContact(contact), "contact is \"" + contact + "\"; it must be an e-mail or web address");
        }

        /** Whether it is a URL that others on the way cannot answer for; to this machine itself it may be plain. */
        public static boolean isSafe(String url) {
            Matcher parts = URL.matcher(url);
            return parts.matches()
                    && (parts.group(1).equals("https")
                            || Messaging.isLoopback(parts.group(2).replaceAll("[\\[\\]]", "")));
        }

        /** Whether it may be an e-mail or web address, in characters that a header of HTTP may have. */
        public static boolean isContact(String text) {
            return text.length() <= MOST_CONTACT && CONTACT.matcher(text).matches();
        }

        private static final String PUBLISHED_HOST = "api.met.no";

        /** Whoever shows its data must name it and the licence (api.met.no/doc/License). */
        private static final String PUBLISHED_SOURCE = "MET Norway (CC BY 4.0)";

        /** Where it is asked. */
        public String host() {
            Matcher parts = URL.matcher(url);
            return parts.matches() ? parts.group(2) : url;
        }

        /** The service as people are to read it wherever something of it is shown. */
        public String source() {
            return host().equals(PUBLISHED_HOST) ? PUBLISHED_SOURCE : host();
        }

        /** What leaves the house, °: rounded to about a kilometre, so that nobody can tell whose tunnel it is. */
        public double coarseLatitudeDeg() {
            return coarse(latitudeDeg);
        }

        /** The same. */
        public double coarseLongitudeDeg() {
            return coarse(longitudeDeg);
        }

        private static double coarse(double deg) {
            return StrictMath.rint(deg * 100) / 100 + 0.0; // no −0.0
        }
    }
}
