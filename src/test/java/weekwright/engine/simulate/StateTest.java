package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;

/** A number that is added to a trial's state has to be cleared before a run and taken over by the second answer. */
class StateTest {
    /** Of one day alone, or worked out anew on the day on which it is asked for. */
    private static final Set<String> OF_A_DAY = Set.of(
            "stretchEnd",
            "workedOn",
            "holdsOn",
            "holdsFrom",
            "filmPerson",
            "filmMinutes",
            "drift",
            "driftOn",
            "driftIsMore");

    private static List<Field> numbers(Class<?> type) {
        List<Field> fields = new ArrayList<>();
        for (Field field : type.getDeclaredFields()) {
            if (field.getType().isPrimitive()
                    && (field.getModifiers() & (Modifier.STATIC | Modifier.FINAL)) == 0
                    && !OF_A_DAY.contains(field.getName())) {
                fields.add(field);
            }
        }
        return fields;
    }

    /** Another value in each, none of them what it begins with; lists stay empty. */
    private static void fill(Object state) throws IllegalAccessException {
        byte value = 7;
        for (Field field : numbers(state.getClass())) {
            if (field.getType() == boolean.class) {
                field.setBoolean(state, true);
            } else if (field.getType() == byte.class) {
                field.setByte(state, value++);
            } else if (!Set.of("queued", "waiting").contains(field.getName())) {
                // a byte widens to an int, a long or a double
                field.setByte(state, value++);
            }
        }
    }

    private static List<String> said(Object state) throws IllegalAccessException {
        List<String> said = new ArrayList<>();
        for (Field field : numbers(state.getClass())) {
            said.add(field.getName() + " " + field.get(state));
        }
        return said;
    }

    private static Setup setup() {
        ProjectInputs project = ProjectInputs.project().stage("build");
        project.task("sill");
        return new Setup(project.inputs());
    }

    @Test
    void a_copy_has_every_number_of_the_other_and_a_cleared_one_none() throws Exception {
        Setup setup = setup();
        State from = new State(setup, true);
        fill(from);
        State to = new State(setup, true);
        assertThat(said(to)).isNotEqualTo(said(from));
        to.copy(from);
        assertThat(said(to)).isEqualTo(said(from)).hasSizeGreaterThan(30);
        to.clear();
        assertThat(said(to)).allMatch(one -> one.matches("\\w+ (0|0\\.0|false)"));
    }

    @Test
    void a_task_is_copied_whole_but_for_what_is_of_one_day() throws Exception {
        Setup setup = setup();
        TaskState from = new TaskState(setup, 0);
        fill(from);
        TaskState to = new TaskState(setup, 0);
        assertThat(said(to)).isNotEqualTo(said(from));
        to.copy(from);
        assertThat(said(to)).isEqualTo(said(from)).hasSizeGreaterThan(30);
    }
}
