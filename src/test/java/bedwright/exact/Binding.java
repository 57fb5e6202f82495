package bedwright.exact;

import bedwright.plan.Rule;

/**
 * Where a rule is felt.
 *
 * @param small the season
 * @param loosened edits of its text, by twos, that give the rule room or take away its price
 */
record Binding(SmallSeason small, String... loosened) {
    /** A season for each rule, so that no rule goes untried. */
    static Binding of(Rule rule) {
        return switch (rule) {
            case BED_ROOM -> new Binding(SmallSeason.TIGHT_BEDS, "\"length\": 6", "\"length\": 60");
            case HOURS ->
                new Binding(SmallSeason.FEW_HOURS, "\"hired\": [{\"hours\": 0}]", "\"hired\": [{\"hours\": 99}]");
            case CUTTING_HOURS -> new Binding(SmallSeason.FEW_CUTTING_HOURS, "\"coolHours\": 0.5", "\"coolHours\": 9");
            case BENCH_ROOM -> new Binding(SmallSeason.SMALL_BENCH, "\"bench\": 20", "\"bench\": 9999");
            case STOCK_ROOM -> new Binding(SmallSeason.SHORT_NET, "\"metres\": 3", "\"metres\": 99");
            case MUST_BE_OURS -> new Binding(SmallSeason.MUST_BE_OURS, "{\"must\": 3}", "{\"shortage\": 0}");
            case TAKINGS -> new Binding(SmallSeason.AS_IT_IS, "\"price\": 1.2, \"asks\"", "\"price\": 0, \"asks\"");
            case SHORTAGE -> new Binding(SmallSeason.SHORTAGE_PRICE, "{\"shortage\": 2.5}", "{\"shortage\": 0}");
            case BUY_IN -> new Binding(SmallSeason.AS_IT_IS, "{\"buyIn\": 1.6}", "{\"buyIn\": 0}");
            case HOURS_PAID ->
                new Binding(
                        SmallSeason.AS_IT_IS,
                        "\"ownRate\": 10",
                        "\"ownRate\": 0",
                        "\"hiredRate\": 18",
                        "\"hiredRate\": 0");
            case MATERIAL ->
                new Binding(
                        SmallSeason.DEAR_PLUGS,
                        "\"price\": 2.5,\n      \"figures\"",
                        "\"price\": 0,\n      \"figures\"");
            case EXTRA_STOCK -> new Binding(SmallSeason.NET_THAT_CAN_BE_BOUGHT, "\"buy\": 15", "\"buy\": 0");
            case REST_YEARS -> new Binding(SmallSeason.REST_YEARS, "\"restBroken\": 6", "\"restBroken\": 0");
            case FOLLOW_ON -> new Binding(SmallSeason.FOLLOW_ON, "\"followOn\": 25", "\"followOn\": 0");
            case CHANGES -> throw new IllegalArgumentException("Felt only in a season under way");
        };
    }
}
