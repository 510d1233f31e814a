// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;

import garboard.workbench.start.ExampleChoice;

/** Starts from one of the examples. */
public final class NewFromExampleHandler {

    @Execute
    void run(ExampleChoice examples) {
        examples.choose();
    }
}
