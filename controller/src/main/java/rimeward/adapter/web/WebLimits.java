package rimeward.adapter.web;

/**
 * How much of the machine the page may take, whoever asks and however many.
 *
 * @param connections most at one time; when one more comes, the one that has been busy with nothing for longest goes
 * @param listeners most that follow live
 * @param headBytes longest request line and headers together
 * @param bodyBytes longest body
 * @param requestMs a request must be whole after so long, ms
 * @param idleMs how long a connection may be kept without a request, ms
 * @param stallMs how long an answer may lie that nobody takes, ms
 * @param waiting requests that wait to be answered
 * @param unsentBytes answers that lie in memory until they are taken; beyond that none is made
 */
record WebLimits(
        int connections,
        int listeners,
        int headBytes,
        int bodyBytes,
        long requestMs,
        long idleMs,
        long stallMs,
        int waiting,
        long unsentBytes) {

    /** More than the browsers of one household use. Own choice. */
    static WebLimits usual() {
        return new WebLimits(128, 24, 8192, 2048, 5_000, 30_000, 15_000, 32, 8L << 20);
    }
}
