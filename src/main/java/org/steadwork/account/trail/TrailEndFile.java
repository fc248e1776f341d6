package org.steadwork.account.trail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Optional;

/** The file beside the database that keeps where the sealed trail ended: its name, the number of entries, the hash of the last, and when. */
public record TrailEndFile(Path path) {

    private static final TrailHead UNREADABLE = new TrailHead("unreadable", 0, "");

    /** Returns what the file says, nothing when there is none; what cannot be read is the end of no trail. */
    public Optional<TrailHead> read() {
        if (!Files.exists(path)) {
            return Optional.empty();
        }
        try {
            String[] words = Files.readString(path).strip().split("\\s+");
            return Optional.of(words.length >= 3 && words[1].matches("\\d{1,18}") ? new TrailHead(words[0], Long.parseLong(words[1]), words[2]) : UNREADABLE);
        } catch (IOException e) {
            return Optional.of(UNREADABLE);
        }
    }

    /** Writes it anew, whole or not at all. */
    public void write(TrailHead head, Instant now) throws IOException {
        Path file = path.toAbsolutePath();
        Files.createDirectories(file.getParent());
        Path next = file.resolveSibling(file.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        Files.writeString(next, head.trail() + " " + head.sealed() + " " + head.hash() + " " + now + "\n");
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
