package org.steadwork.storage;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import org.steadwork.kernel.RefusedStartException;

/** The command {@code make-key FILE}: writes a key of 256 random bits into a new file that only its owner reads. */
public final class MakeKeyCommand {

    private MakeKeyCommand() {
    }

    public static int run(List<String> words, PrintStream out) {
        if (words.size() != 1) {
            throw new RefusedStartException("make-key takes one file: make-key database.key");
        }
        Path file = Path.of(words.get(0));
        byte[] bits = new byte[32];
        new SecureRandom().nextBytes(bits);
        try {
            if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            } else {
                Files.createFile(file);
            }
            Files.writeString(file, Base64.getUrlEncoder().withoutPadding().encodeToString(bits) + "\n", StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new RefusedStartException("There is a file " + file + " already. A key is never written over another.", e);
        } catch (IOException e) {
            throw new RefusedStartException("The key could not be written to " + file + ": " + e.getMessage(), e);
        }
        out.println("A key was written to " + file + ". Keep a copy of it in another place: without it nothing that it seals can be opened.");
        return 0;
    }
}
