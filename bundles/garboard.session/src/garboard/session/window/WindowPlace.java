// SPDX-License-Identifier: EPL-2.0
package garboard.session.window;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A rectangle on the desktop: a window, or what a screen has room for. In the desktop's points, which large scales do not change. */
public record WindowPlace(int x, int y, int width, int height) {

    /** Less of a window cannot be worked with, nor found again. */
    private static final int SMALLEST = 320;
    /** So much of the top edge must be on a screen for a hand to take hold of it. */
    private static final int HOLD = 120;

    /** {@return a place as {@link #toString} writes it; nothing when it is no place} */
    public static Optional<WindowPlace> parse(String text) {
        String[] numbers = text.split(" ");
        try {
            return numbers.length != 4 ? Optional.empty() : Optional.of(new WindowPlace(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]),
                Integer.parseInt(numbers[2]), Integer.parseInt(numbers[3])));
        } catch (NumberFormatException noPlace) {
            return Optional.empty();
        }
    }

    /** {@return a window of this size in the middle of a screen, smaller where the screen is} */
    public static WindowPlace middle(int width, int height, WindowPlace screen) {
        int wide = Math.min(width, screen.width);
        int high = Math.min(height, screen.height);
        return new WindowPlace(screen.x + (screen.width - wide) / 2, screen.y + (screen.height - high) / 2, wide, high);
    }

    /**
     * {@return where the window stands on the screens that are there now} Where it was, if it can be taken hold of there; else in the middle
     * of the screen nearest to it; in no case larger than its screen.
     *
     * @param screens at least one
     */
    public WindowPlace on(List<WindowPlace> screens) {
        WindowPlace screen = screens.stream().max(Comparator.comparingLong(this::shared).thenComparing(Comparator.comparingLong(this::distance).reversed()))
            .orElseThrow();
        int wide = Math.clamp(width, Math.min(SMALLEST, screen.width), screen.width);
        int high = Math.clamp(height, Math.min(SMALLEST, screen.height), screen.height);
        var sized = new WindowPlace(x, y, wide, high);
        return sized.canBeHeld(screen) ? sized : middle(wide, high, screen);
    }

    private boolean canBeHeld(WindowPlace screen) {
        return y >= screen.y && y < screen.y + screen.height - HOLD / 2
            && overlap(x, (long) x + width, screen.x, (long) screen.x + screen.width) >= Math.min(HOLD, width);
    }

    private long shared(WindowPlace other) {
        return overlap(x, (long) x + width, other.x, (long) other.x + other.width) * overlap(y, (long) y + height, other.y, (long) other.y + other.height);
    }

    private static long overlap(long from, long to, long otherFrom, long otherTo) {
        return Math.max(0, Math.min(to, otherTo) - Math.max(from, otherFrom));
    }

    private long distance(WindowPlace other) {
        return Math.abs((long) x + width / 2 - other.x - other.width / 2) + Math.abs((long) y + height / 2 - other.y - other.height / 2);
    }

    @Override
    public String toString() {
        return x + " " + y + " " + width + " " + height;
    }
}
