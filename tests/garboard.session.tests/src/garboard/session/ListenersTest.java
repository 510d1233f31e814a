// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

class ListenersTest {

    private final Listeners<String> listeners = new Listeners<>();
    private final List<String> heard = new ArrayList<>();

    @Test
    void tellsInTheOrderInWhichTheyAsked() {
        listeners.add(news -> heard.add("first " + news));
        listeners.add(news -> heard.add("second " + news));
        listeners.tell("a");
        assertThat(heard).containsExactly("first a", "second a");
    }

    @Test
    void tellsNobodyWhoEndedItWhileOthersWereTold() {
        var later = new ArrayList<Listeners.Subscription>();
        listeners.add(news -> later.forEach(Listeners.Subscription::close));
        later.add(listeners.add(heard::add));
        listeners.tell("a");
        assertThat(heard).isEmpty();
    }

    @Test
    void toleratesWhoBeginsWhileOthersAreTold() {
        listeners.add(news -> listeners.add(heard::add));
        listeners.tell("a");
        assertThat(heard).isEmpty();
        listeners.tell("b");
        assertThat(heard).containsExactly("b");
    }
}
