// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** Those who want to be told of something, in the order in which they asked. */
public final class Listeners<T> {

    private final List<Consumer<? super T>> listeners = new CopyOnWriteArrayList<>();

    /** {@return what ends the listening when it is closed} */
    public Subscription add(Consumer<? super T> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Tells all who listen now, but not those who end their listening while others are told: what they show may be gone. */
    public void tell(T news) {
        for (Consumer<? super T> listener : listeners) {
            if (listeners.contains(listener)) {
                listener.accept(news);
            }
        }
    }

    /** Ends a listening. */
    public interface Subscription extends AutoCloseable {
        @Override
        void close();
    }
}
