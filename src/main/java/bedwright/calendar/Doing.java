package bedwright.calendar;

import bedwright.season.Job;

/** What an entry of the calendar is about. */
public enum Doing {
    PREPARE("Preparing beds"),
    SOW("Sowing"),
    FILL_TRAYS("Sowing in trays"),
    HARDEN("Hardening off"),
    PLANT_OUT("Planting out"),
    NET_UP("Putting up net"),
    NET_DOWN("Taking down net"),
    COVER_ON("Covering"),
    COVER_OFF("Uncovering"),
    PINCH("Pinching"),
    WEED("Weeding"),
    FIRST_STEMS("First stems"),
    CLEAR("Clearing"),
    EVENT("Events");

    private final String words;

    Doing(String words) {
        this.words = words;
    }

    static Doing of(Job job) {
        return switch (job) {
            case PREPARE -> PREPARE;
            case SOW -> SOW;
            case FILL_TRAYS -> FILL_TRAYS;
            case PLANT_OUT -> PLANT_OUT;
            case NET_UP -> NET_UP;
            case NET_DOWN -> NET_DOWN;
            case COVER_ON -> COVER_ON;
            case COVER_OFF -> COVER_OFF;
            case PINCH -> PINCH;
            case WEED -> WEED;
            case CLEAR -> CLEAR;
        };
    }

    /** As it heads a calendar of its own. */
    public String words() {
        return words;
    }
}
