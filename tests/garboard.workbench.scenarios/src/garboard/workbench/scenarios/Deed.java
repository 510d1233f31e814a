// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

/** What a hand does in a process of its own. */
enum Deed {

    /** Begins a record, types a beam, half of a draught and a text that is no number, and is then killed. */
    TYPE_AND_WAIT {
        @Override
        String run(Hand hand, WindowUnderTest window) {
            hand.press("start.new");
            hand.type("field:vessel.name", "Made-up Tern");
            hand.type("field:vessel.beam", "3.2 m");
            hand.begin("field:vessel.draught", "four handspans");
            hand.await("the journal to be written", () -> Journals.hold(window.userFolder(), "four handspans"));
            return "";
        }
    },

    /** Takes up what the process before left, and tells what stands in the fields. */
    TAKE_UP {
        @Override
        String run(Hand hand, WindowUnderTest window) {
            hand.await("the offer", () -> hand.sees("Made-up Tern"));
            hand.press("start.left.take");
            return "beam=" + hand.read("field:vessel.beam") + "\ndraught=" + hand.read("field:vessel.draught") + "\n";
        }
    },

    /** Walks through the pages of an example and tells how large letters and window are. */
    WALK_AT_SCALE {
        @Override
        String run(Hand hand, WindowUnderTest window) {
            return new DoubleScale.Walk(hand, window).take();
        }
    };

    /** @return what the process that started this one wants to know */
    abstract String run(Hand hand, WindowUnderTest window);
}
