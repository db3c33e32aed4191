package rimeward.adapter.config;

/**
 * Where something was written.
 *
 * @param file the file as its reader named it
 * @param line counted from 1
 */
public record Origin(String file, int line) {
    @Override
    public String toString() {
        return file + ":" + line;
    }
}
