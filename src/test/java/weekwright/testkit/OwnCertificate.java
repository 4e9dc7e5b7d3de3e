package weekwright.testkit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.util.Base64;
import weekwright.web.Certificate;

/** A certificate that nobody else vouches for, for mill.example and 127.0.0.1, made by the tool that comes with Java. */
public final class OwnCertificate {
    private static final String PASSWORD = "oak pegs";

    private final java.security.cert.Certificate made;
    private final Path certificate;
    private final Path key;

    private OwnCertificate(java.security.cert.Certificate made, Path certificate, Path key) {
        this.made = made;
        this.certificate = certificate;
        this.key = key;
    }

    /** Makes it; its two files of PEM text are put into the folder. */
    public static OwnCertificate in(Path folder) {
        try {
            Path store = folder.resolve("made.p12");
            Process tool = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "keytool")
                                    .toString(),
                            "-genkeypair",
                            "-alias",
                            "mill",
                            "-keyalg",
                            "EC",
                            "-dname",
                            "CN=mill.example",
                            "-ext",
                            "san=dns:mill.example,ip:127.0.0.1",
                            "-validity",
                            "36500",
                            "-storetype",
                            "PKCS12",
                            "-keystore",
                            store.toString(),
                            "-storepass",
                            PASSWORD)
                    .redirectErrorStream(true)
                    .start();
            String said = new String(tool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (tool.waitFor() != 0) {
                throw new IllegalStateException(said);
            }
            KeyStore keys = KeyStore.getInstance(store.toFile(), PASSWORD.toCharArray());
            Path certificate = folder.resolve("cert.pem");
            Path key = folder.resolve("key.pem");
            Files.writeString(
                    certificate, pem("CERTIFICATE", keys.getCertificate("mill").getEncoded()));
            Files.writeString(
                    key,
                    pem(
                            "PRIVATE KEY",
                            keys.getKey("mill", PASSWORD.toCharArray()).getEncoded()));
            return new OwnCertificate(keys.getCertificate("mill"), certificate, key);
        } catch (IOException | GeneralSecurityException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String pem(String kind, byte[] bytes) {
        return "-----BEGIN " + kind + "-----\n"
                + Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes) + "\n-----END " + kind + "-----\n";
    }

    /** For those who are to trust it. */
    public java.security.cert.Certificate made() {
        return made;
    }

    /** As the program reads it. */
    public Certificate read() {
        try {
            return Certificate.of(certificate, key);
        } catch (Certificate.Unusable e) {
            throw new IllegalStateException(e);
        }
    }

    /** The SHA-256 of its public key in Base64, by which a browser can be told to trust it alone. */
    public String fingerprint() {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256")
                            .digest(made.getPublicKey().getEncoded()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
