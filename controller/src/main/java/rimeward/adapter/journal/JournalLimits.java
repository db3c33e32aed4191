package rimeward.adapter.journal;

/**
 * How much is kept, and how often it is written.
 *
 * @param batchMs history waits this long for its commit, ms of the loop's time
 * @param waitingRows most rows of history that wait in memory; beyond, minutes are dropped, then the oldest
 * @param minuteDays days for which every kept frame stays; then one frame in ten minutes, and the changes
 * @param frameDays days after which frames and decisions go
 * @param frameRows most frames, and most decisions
 * @param alertDays days after which alerts go
 * @param mostPages most pages of 4096 bytes the file may have
 */
public record JournalLimits(
        long batchMs, int waitingRows, int minuteDays, int frameDays, int frameRows, int alertDays, int mostPages) {

    /** Ten minutes a batch; a month of minutes, thirteen months of frames; at most 400 MB. */
    public static JournalLimits usual() {
        return new JournalLimits(600_000, 4096, 30, 400, 300_000, 800, 100_000);
    }
}
