// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;

import garboard.model.io.RecordWriteException;

/**
 * Writes the entry of this window on a thread of its own. Only the latest state counts: what was asked for while the disk was busy with
 * something older is done at once, and nothing in between.
 */
final class JournalWriter implements AutoCloseable {

    private static final Duration LONGEST_FLUSH = Duration.ofSeconds(10);

    private final Path folder;
    private final Consumer<? super Exception> trouble;
    private final Thread thread = new Thread(this::work, "journal");
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition asked = lock.newCondition();
    private final Condition done = lock.newCondition();
    /** Nothing asked; something to write; or an empty Optional inside: to be cleared. */
    private Optional<Optional<Snapshot>> next = Optional.empty();
    private boolean working;
    private boolean failed;
    private boolean ending;
    private Optional<Entry> entry = Optional.empty();

    /** @param trouble is told on the journal's thread, once until it goes well again */
    JournalWriter(Path folder, Consumer<? super Exception> trouble) {
        this.folder = folder;
        this.trouble = trouble;
        thread.setDaemon(true);
        thread.start();
    }

    void write(Snapshot snapshot) {
        ask(Optional.of(snapshot));
    }

    void clear() {
        ask(Optional.empty());
    }

    private void ask(Optional<Snapshot> state) {
        lock.lock();
        try {
            next = Optional.of(state);
            asked.signal();
        } finally {
            lock.unlock();
        }
    }

    /** Waits until all that was asked for is done. @return whether it is, and went well */
    boolean flush() {
        lock.lock();
        try {
            long left = LONGEST_FLUSH.toNanos();
            while ((next.isPresent() || working) && left > 0) {
                left = done.awaitNanos(left);
            }
            return next.isEmpty() && !working && !failed;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        } finally {
            lock.unlock();
        }
    }

    private void work() {
        boolean goOn = true;
        while (goOn) {
            Optional<Optional<Snapshot>> task = take();
            boolean well = task.map(this::did).orElse(true);
            goOn = finish(well);
        }
    }

    private Optional<Optional<Snapshot>> take() {
        lock.lock();
        try {
            while (next.isEmpty() && !ending) {
                asked.awaitUninterruptibly();
            }
            Optional<Optional<Snapshot>> task = next;
            next = Optional.empty();
            working = true;
            return task;
        } finally {
            lock.unlock();
        }
    }

    private boolean finish(boolean well) {
        lock.lock();
        try {
            working = false;
            failed = !well;
            done.signalAll();
            return !ending || next.isPresent();
        } finally {
            lock.unlock();
        }
    }

    private boolean did(Optional<Snapshot> state) {
        try {
            if (state.isPresent()) {
                if (entry.isEmpty()) {
                    entry = Optional.of(Entry.create(folder));
                }
                entry.get().write(state.get());
            } else if (entry.isPresent()) {
                entry.get().clear();
            }
            return true;
        } catch (IOException | RecordWriteException | RuntimeException broken) {
            if (!failed) {
                trouble.accept(broken);
            }
            return false;
        }
    }

    /** Ends the thread when all is done, and throws the entry away. */
    @Override
    public void close() {
        lock.lock();
        try {
            ending = true;
            asked.signal();
        } finally {
            lock.unlock();
        }
        try {
            thread.join(LONGEST_FLUSH.toMillis());
            if (entry.isPresent()) {
                entry.get().delete();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (IOException left) {
            trouble.accept(left);
        }
    }
}
