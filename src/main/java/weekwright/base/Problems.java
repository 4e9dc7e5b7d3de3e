package weekwright.base;

import java.util.ArrayList;
import java.util.List;

/** Gathers every problem of one input, so that all are told at once. Not safe for use from several threads. */
public final class Problems {
    private final List<Problem> list = new ArrayList<>();

    public void add(Problem problem) {
        list.add(problem);
    }

    public void addAll(List<Problem> problems) {
        list.addAll(problems);
    }

    public void fault(String column, String read, String rule, String remedy) {
        list.add(Problem.fault(column, read, rule, remedy));
    }

    public void remark(String column, String read, String rule, String remedy) {
        list.add(Problem.remark(column, read, rule, remedy));
    }

    public boolean hasFaults() {
        return list.stream().anyMatch(Problem::isFault);
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** All of them, in the order in which they were found. */
    public List<Problem> list() {
        return List.copyOf(list);
    }

    public List<Problem> faults() {
        return list.stream().filter(Problem::isFault).toList();
    }

    public List<Problem> remarks() {
        return list.stream().filter(p -> !p.isFault()).toList();
    }
}
