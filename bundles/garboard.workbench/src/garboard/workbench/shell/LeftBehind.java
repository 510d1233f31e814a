// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

import garboard.model.io.RecordReadException;
import garboard.session.Listeners;
import garboard.session.journal.Leftover;

/** What earlier windows left behind, looked for in the background, so that the window need not wait for it. */
public final class LeftBehind implements AutoCloseable {

    /** A process that was killed a moment ago may still hold its journal while the next one starts. */
    private static final int SECOND_LOOK_SECONDS = 5;

    private final Path journals;
    private final List<Found> held = new CopyOnWriteArrayList<>();
    private final List<Found> undecided = new CopyOnWriteArrayList<>();
    private final Listeners<List<Found>> listeners = new Listeners<>();
    private volatile boolean closed;

    /** @param comparison how it differs from what is saved; nothing when it cannot be read, @param unreadable then says why */
    public record Found(Leftover leftover, Optional<Leftover.Comparison> comparison, Optional<String> unreadable) {

        private static Found of(Leftover leftover) {
            try {
                return new Found(leftover, Optional.of(leftover.compare()), Optional.empty());
            } catch (RecordReadException damaged) {
                return new Found(leftover, Optional.empty(), Optional.of(damaged.getMessage()));
            }
        }

        /** What says the same as its file is nothing that a person would miss. */
        private boolean worthTelling() {
            return comparison.filter(one -> one.differences().isEmpty()).isEmpty();
        }
    }

    private LeftBehind(Path journals) {
        this.journals = journals;
    }

    static LeftBehind in(Path journals) {
        var left = new LeftBehind(journals);
        left.look(ForkJoinPool.commonPool());
        left.look(CompletableFuture.delayedExecutor(SECOND_LOOK_SECONDS, TimeUnit.SECONDS));
        return left;
    }

    private void look(Executor when) {
        CompletableFuture.runAsync(this::look, when).exceptionally(broken -> {
            System.getLogger(LeftBehind.class.getName()).log(Level.ERROR, "What was left in " + journals + " cannot be offered", broken);
            return null;
        });
    }

    private synchronized void look() {
        if (closed) {
            return;
        }
        int before = undecided.size();
        for (Leftover leftover : Leftover.in(journals)) {
            Found found = Found.of(leftover);
            if (found.worthTelling()) {
                held.add(found);
                undecided.add(found);
            } else {
                leftover.discard();
            }
        }
        if (undecided.size() > before) {
            listeners.tell(undecided());
        }
    }

    /** {@return what a person has still to decide upon, as far as it is known by now} */
    public List<Found> undecided() {
        return List.copyOf(undecided);
    }

    /** {@return the subscription of a listener that is told, on any thread, when more was found} */
    public Listeners.Subscription onFound(Consumer<? super List<Found>> listener) {
        return listeners.add(listener);
    }

    /** Takes note that it was taken up or thrown away, or is to be offered at the next start. */
    public void decided(Found one) {
        undecided.remove(one);
    }

    /** Lets go of all of it: what was not thrown away, the next window offers. */
    @Override
    public synchronized void close() {
        closed = true;
        held.forEach(one -> one.leftover().close());
    }
}
