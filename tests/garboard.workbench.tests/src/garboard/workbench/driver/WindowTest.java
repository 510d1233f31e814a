// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.driver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.workbench.scenarios.WindowUnderTest;

class WindowTest {

    @Test
    void theWindowComesUpAndGoesTwice() {
        for (int round = 0; round < 2; round++) {
            try (var window = WindowUnderTest.start()) {
                assertThat(window.<String>onWindow(() -> window.shell().getText())).contains("Garboard");
            }
        }
    }
}
