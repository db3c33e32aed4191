package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.List;
import javax.net.ssl.KeyManager;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManager;
import javax.net.ssl.TrustManagerFactory;
import org.jspecify.annotations.Nullable;
import rimeward.site.Messaging;

/** Reads passwords and certificates from their files, anew for each attempt, so that a changed one is used without a restart. */
final class Secrets {
    private Secrets() {}

    /** The first line of a file. */
    static char[] password(String file) throws LineFailed {
        try {
            List<String> lines = Files.readAllLines(Path.of(file), UTF_8);
            if (!lines.isEmpty() && !lines.get(0).isEmpty()) {
                return lines.get(0).toCharArray();
            }
            throw new LineFailed("the password's file " + file + " is empty");
        } catch (IOException e) {
            throw new LineFailed("the password's file " + file + " cannot be read (" + e + ")", e);
        }
    }

    static SSLSocketFactory tls(Messaging.Security.Tls tls) throws LineFailed {
        try {
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(keys(tls.identity()), trust(tls.trust()), null);
            return context.getSocketFactory();
        } catch (IOException | GeneralSecurityException e) {
            throw new LineFailed("a certificate's file cannot be used (" + e + ")", e);
        }
    }

    private static TrustManager @Nullable [] trust(Messaging.Trust trust) throws IOException, GeneralSecurityException {
        if (!(trust instanceof Messaging.Trust.Own own)) {
            return null; // whoever Java trusts
        }
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        try (InputStream pem = Files.newInputStream(Path.of(own.file()))) {
            int count = 0;
            for (Certificate each : CertificateFactory.getInstance("X.509").generateCertificates(pem)) {
                store.setCertificateEntry("own-" + count, each);
                count++;
            }
        }
        TrustManagerFactory factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(store);
        return factory.getTrustManagers();
    }

    private static KeyManager @Nullable [] keys(Messaging.Identity identity)
            throws IOException, GeneralSecurityException, LineFailed {
        if (!(identity instanceof Messaging.Identity.Pkcs12 mine)) {
            return null;
        }
        char[] password = password(mine.passwordFile());
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream file = Files.newInputStream(Path.of(mine.file()))) {
            store.load(file, password);
        }
        KeyManagerFactory factory = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        factory.init(store, password);
        return factory.getKeyManagers();
    }
}
