package org.steadwork.letter;

import io.quarkus.runtime.QuarkusApplication;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.steadwork.letter.pdf.LetterPdf;

/** The command {@code check-letter FILE}: says whether and when a PDF was signed here. Ends with 0 when it was, with 1 when not, with 2 on a wrong call. */
public class CheckLetter implements QuarkusApplication {

    @Inject
    LetterVerification verification;

    @Override
    @ActivateRequestContext
    public int run(String... words) {
        return check(words, System.out);
    }

    int check(String[] words, PrintStream out) {
        if (words.length != 1) {
            out.println("check-letter takes one file: check-letter letter.pdf");
            return 2;
        }
        byte[] file;
        try {
            file = Files.readAllBytes(Path.of(words[0]));
        } catch (IOException e) {
            out.println("The file " + words[0] + " cannot be read.");
            return 2;
        }
        Verdict verdict = verification.of(LetterPdf.sha256(file));
        out.println("SHA-256 " + verdict.fingerprint());
        out.println(verdict.words().replace('\u00a0', ' '));
        return verdict.known() ? 0 : 1;
    }
}
