package org.flexwright.core.session;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.flexwright.core.Message;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * Holds a project's folder for one writer. The system's lock is on a file of its own that nobody reads: on some systems a program loses
 * its lock as soon as it closes any other opening of the same file. Who holds it stands beside, in {@code lock}.
 */
final class FolderLock {
    static final String INFO = "lock";
    static final String HELD = "lock.held";

    private final Disk disk;
    private final Path info;
    private final Disk.Lock lock;

    private FolderLock(Disk disk, Path info, Disk.Lock lock) {
        this.disk = disk;
        this.info = info;
        this.lock = lock;
    }

    /** The lock, or who has it. */
    record Taking(FolderLock lock, Message heldBy) {
    }

    /**
     * Who holds a lock.
     *
     * @param who   name, may be empty
     * @param host  machine
     * @param pid   process
     * @param since when it was taken
     * @param start when the process began: a number is used again, number and begin are not
     */
    private record Holder(String who, String host, long pid, Instant since, String start) {
        static Holder self(String who, Instant now) {
            ProcessHandle p = ProcessHandle.current();
            return new Holder(who, hostName(), p.pid(), now, p.info().startInstant().map(Instant::toString).orElse(""));
        }

        boolean sameProcess(Holder other) {
            return pid == other.pid && host.equals(other.host) && start.equals(other.start);
        }

        String json() {
            JsonObject o = new JsonObject();
            o.addProperty("who", who);
            o.addProperty("host", host);
            o.addProperty("pid", pid);
            o.addProperty("since", since.toString());
            o.addProperty("start", start);
            return o + "\n";
        }

        static Optional<Holder> parse(byte[] bytes) {
            try {
                JsonObject o = JsonParser.parseString(new String(bytes, StandardCharsets.UTF_8)).getAsJsonObject();
                return Optional.of(new Holder(o.get("who").getAsString(), o.get("host").getAsString(), o.get("pid").getAsLong(),
                        Instant.parse(o.get("since").getAsString()), o.get("start").getAsString()));
            } catch (RuntimeException unknownText) {
                return Optional.empty();
            }
        }

        Message heldBy() {
            return who.isEmpty() ? Message.of(ProjectStore.class, "lock.heldByProcess", host, Long.toString(pid), since)
                    : Message.of(ProjectStore.class, "lock.heldByPerson", who, host, Long.toString(pid), since);
        }

        /** The machine's own name. Never asked of the network: where no name server answers, that takes seconds. */
        private static String hostName() {
            try {
                return Files.readString(Path.of("/proc/sys/kernel/hostname")).strip();
            } catch (IOException notLinux) {
                return Stream.of("HOSTNAME", "COMPUTERNAME").map(System::getenv).filter(Objects::nonNull).findFirst().orElse("localhost");
            }
        }
    }

    static Taking take(Disk disk, Path folder, String who, Instant now) throws IOException {
        Path info = folder.resolve(INFO);
        Holder self = Holder.self(who, now);
        Optional<Holder> present = holder(disk, info);
        if (present.isPresent() && present.get().sameProcess(self)) {
            return new Taking(null, Message.of(ProjectStore.class, "lock.heldHere"));
        }
        Optional<Disk.Lock> lock = disk.lock(folder.resolve(HELD));
        if (lock.isEmpty()) {
            return new Taking(null, holder(disk, info).map(Holder::heldBy).orElse(Message.of(ProjectStore.class, "lock.heldByUnknown")));
        }
        boolean done = false;
        try (Disk.Sink sink = disk.create(info)) {
            sink.write(self.json().getBytes(StandardCharsets.UTF_8));
            done = true;
        } finally {
            if (!done) {
                lock.get().close();
            }
        }
        return new Taking(new FolderLock(disk, info, lock.get()), null);
    }

    private static Optional<Holder> holder(Disk disk, Path info) throws IOException {
        return disk.exists(info) ? Holder.parse(disk.read(info)) : Optional.empty();
    }

    void release() throws IOException {
        try (lock) {
            disk.delete(info);
        }
    }
}
