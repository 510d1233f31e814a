// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The one window in which all scenarios of a run take place, one after the other: e4 keeps the thread of the first window for its events,
 * and a second window in the same process would not hear them.
 */
record OneWindow(WindowUnderTest window, Answers answers) implements ExtensionContext.Store.CloseableResource {

    /** {@return the window, opened when it is asked for the first time and closed at the end of the run} */
    static OneWindow of(ExtensionContext context) {
        return context.getRoot().getStore(ExtensionContext.Namespace.create(OneWindow.class))
            .getOrComputeIfAbsent(OneWindow.class, none -> open(), OneWindow.class);
    }

    private static OneWindow open() {
        var window = WindowUnderTest.start();
        return new OneWindow(window, Answers.instead(window));
    }

    @Override
    public void close() {
        answers.discardWhenAsked(true);
        window.close();
    }
}
