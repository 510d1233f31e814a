// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

import garboard.model.io.RecordReadException;
import garboard.session.journal.Leftover;

/** What earlier windows left behind, looked for in the background, so that the window need not wait for it. */
public final class LeftBehind implements AutoCloseable {

    private final CompletableFuture<List<Found>> found;
    private final List<Found> decided = new ArrayList<>();

    /** @param comparison how it differs from what is saved; nothing when it cannot be read, @param unreadable then says why */
    public record Found(Leftover leftover, Optional<Leftover.Comparison> comparison, Optional<String> unreadable) {

        private static Found of(Leftover leftover) {
            try {
                return new Found(leftover, Optional.of(leftover.compare()), Optional.empty());
            } catch (RecordReadException damaged) {
                return new Found(leftover, Optional.empty(), Optional.of(damaged.getMessage()));
            }
        }
    }

    private LeftBehind(CompletableFuture<List<Found>> found) {
        this.found = found;
    }

    static LeftBehind in(Path journals) {
        return new LeftBehind(CompletableFuture.supplyAsync(() -> Leftover.in(journals).stream().map(Found::of).filter(LeftBehind::worthTelling).toList()));
    }

    /** What says the same as its file is nothing that a person would miss. */
    private static boolean worthTelling(Found one) {
        boolean nothingLost = one.comparison().filter(comparison -> comparison.differences().isEmpty()).isPresent();
        if (nothingLost) {
            one.leftover().discard();
        }
        return !nothingLost;
    }

    /** Tells what was found and is not decided upon, as soon as it is known; on a thread of its own or at once. */
    public void whenKnown(Consumer<? super List<Found>> listener) {
        found.thenAccept(all -> listener.accept(all.stream().filter(one -> !decided.contains(one)).toList()));
    }

    /** Takes note that it was taken up or thrown away, or is to be offered at the next start. */
    public void decided(Found one) {
        decided.add(one);
    }

    /** Lets go of all of it: what was not thrown away, the next window offers. */
    @Override
    public void close() {
        found.thenAccept(all -> all.forEach(one -> one.leftover().close()));
    }
}
