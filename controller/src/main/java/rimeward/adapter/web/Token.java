package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Set;

/** The secret that whoever asks for something must know: the first line of a file, 128 bits at least. */
final class Token {
    /** In the data folder, where the settings name none. */
    static final String FILE = "page-token";

    /** 128 bits in base 64; of plain letters and digits it is about as much. */
    private static final int LEAST_LETTERS = 22;

    private static final int MOST_BYTES = 4096;
    private static final int MADE_BYTES = 32;

    private final byte[] secret;

    private Token(String secret) {
        this.secret = secret.getBytes(UTF_8);
    }

    /** @throws IOException if there is none, or one that could be guessed */
    static Token read(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(file + " is no token's file: it is longer than " + MOST_BYTES + " bytes");
        }
        String first =
                Files.readString(file, UTF_8).lines().findFirst().orElse("").strip();
        if (first.length() < LEAST_LETTERS || first.chars().distinct().count() < LEAST_LETTERS / 3) {
            throw new IOException("the first line of " + file + " could be guessed: a token has " + LEAST_LETTERS
                    + " letters at least, by chance; `openssl rand -base64 32` makes one");
        }
        if (!first.chars().allMatch(c -> c > ' ' && c < 127)) {
            throw new IOException("the first line of " + file + " has blanks or letters that a header cannot have");
        }
        return new Token(first);
    }

    /** The one of an earlier start, or a new one in a file that its owner alone may read. */
    static Token readOrMake(Path file, SecureRandom random) throws IOException {
        try {
            byte[] bits = new byte[MADE_BYTES];
            random.nextBytes(bits);
            String made = Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
            FileAttribute<Set<PosixFilePermission>> mine =
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));
            try (var out =
                    Files.newByteChannel(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), mine)) {
                out.write(UTF_8.encode(made + "\n"));
            }
            return new Token(made);
        } catch (FileAlreadyExistsException e) {
            return read(file);
        }
    }

    /** Whether a header {@code Authorization} names it; takes as long whatever it names. */
    boolean isNamedIn(String header) {
        boolean bears = header.regionMatches(true, 0, "Bearer ", 0, 7);
        byte[] told = (bears ? header.substring(7).strip() : "").getBytes(UTF_8);
        return MessageDigest.isEqual(told, secret);
    }
}
