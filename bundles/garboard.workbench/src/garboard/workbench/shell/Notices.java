// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.function.Consumer;

import garboard.session.Listeners;

/** What is told quietly at the edge of the window and needs no answer: saved where and when, what the journal cannot do. */
public final class Notices {

    private final Listeners<String> listeners = new Listeners<>();

    /** Shows a sentence until it is old or another comes. On the window's thread. */
    public void say(String sentence) {
        listeners.tell(sentence);
    }

    public Listeners.Subscription onSay(Consumer<? super String> listener) {
        return listeners.add(listener);
    }
}
