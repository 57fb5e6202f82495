package bedwright.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToLongFunction;

/** A sum of variables times whole numbers, plus a whole number. Mutable; overflow throws. */
final class Linear {
    private final Map<Integer, IntVar> vars = new LinkedHashMap<>();
    private final Map<Integer, Long> factors = new LinkedHashMap<>();
    private long constant;

    Linear add(long number) {
        constant = Math.addExact(constant, number);
        return this;
    }

    Linear add(IntVar variable, long factor) {
        if (factor != 0) {
            vars.put(variable.getIndex(), variable);
            factors.merge(variable.getIndex(), factor, Math::addExact);
        }
        return this;
    }

    Linear add(Linear other, long factor) {
        other.factors.forEach((index, own) -> add(other.variable(index), Math.multiplyExact(own, factor)));
        return add(Math.multiplyExact(other.constant, factor));
    }

    private IntVar variable(int index) {
        IntVar variable = vars.get(index);
        if (variable == null) {
            throw new IllegalStateException("A factor without its variable");
        }
        return variable;
    }

    long constant() {
        return constant;
    }

    /** Greatest common divisor of the factors, the constant left aside; 0 if there are none. */
    long commonDivisor() {
        return factors.values().stream()
                .map(BigInteger::valueOf)
                .reduce(BigInteger.ZERO, BigInteger::gcd)
                .longValueExact();
    }

    /** Greatest value within the variables' bounds. */
    long most() {
        long most = constant;
        for (Map.Entry<Integer, Long> term : factors.entrySet()) {
            IntVar variable = variable(term.getKey());
            long bound = term.getValue() > 0
                    ? variable.getDomain().max()
                    : variable.getDomain().min();
            most = Math.addExact(most, Math.multiplyExact(term.getValue(), bound));
        }
        return most;
    }

    /** Least value within the variables' bounds. */
    long least() {
        return -new Linear().add(this, -1).most();
    }

    /** The variables' part divided by a divisor of all factors, without the constant. */
    Linear variablePart(long divisor) {
        Linear part = new Linear();
        factors.forEach((index, factor) -> part.add(variable(index), factor / divisor));
        return part;
    }

    LinearExpr expression() {
        LinearExprBuilder builder = LinearExpr.newBuilder();
        factors.forEach((index, factor) -> builder.addTerm(variable(index), factor));
        return builder.add(constant).build();
    }

    long value(ToLongFunction<IntVar> values) {
        long value = constant;
        for (Map.Entry<Integer, Long> term : factors.entrySet()) {
            value = Math.addExact(
                    value, Math.multiplyExact(term.getValue(), values.applyAsLong(variable(term.getKey()))));
        }
        return value;
    }
}
