package rimeward.page;

import rimeward.alert.AlertKind;

/**
 * An alert that stands.
 *
 * @param incident its id
 * @param sinceEpochS since when, s since 1970 UTC
 * @param text as it was told last
 */
public record StandingAlert(
        String incident, AlertKind kind, String subject, long sinceEpochS, String text, boolean acknowledged) {
    StandingAlert saying(String newer) {
        return new StandingAlert(incident, kind, subject, sinceEpochS, newer, acknowledged);
    }

    StandingAlert known() {
        return new StandingAlert(incident, kind, subject, sinceEpochS, text, true);
    }
}
