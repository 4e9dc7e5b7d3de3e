package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weekwright.account.Entrance;
import weekwright.account.LogInStore;
import weekwright.account.PassphraseRules;
import weekwright.account.Passphrases;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;

/** {@code passphrase}: sets the passphrase with which somebody of the crew logs in, a forgotten one too. */
@Command(
        name = "passphrase",
        description = {
            "Sets the passphrase with which somebody of the crew logs in, and logs that person out everywhere. It may be"
                    + " used while the folder is served.",
            "",
            "The passphrase is asked twice and not shown; where there is no terminal it is one line of standard input."
                    + " " + PassphraseRules.LEAST + " characters or more."
        })
final class PassphraseCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "A project's folder.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "NAME", description = "The person's id or name in the crew.")
    private String name;

    PassphraseCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        try (Db db = new Folder(folder).open(terminal.clock())) {
            List<CrewMember> crew = crew(db);
            CrewMember member = Entrance.named(crew, name)
                    .orElseThrow(() -> Failure.fault("\"" + name + "\" is nobody of the crew. Name one of: "
                            + crew.stream().map(CrewMember::name).collect(Collectors.joining(", ")) + "."));
            if (!db.read(read -> Entrance.crewHasLogIn(read, crew))
                    && member.accessOrDefault() != CrewMember.Access.CREW) {
                throw Failure.fault("The first log-in belongs to somebody with access crew; " + member.name()
                        + " is a helper. Name somebody else first.");
            }
            String passphrase = typed();
            Problems problems = new Problems();
            String project = db.read(SettingsStore::get).project().name();
            PassphraseRules.check("passphrase", passphrase, List.of(member.name(), project), problems);
            Rejected.ifFaults(problems);
            String hash = Passphrases.ofFullCost().hash(passphrase);
            db.write("passphrase", write -> {
                LogInStore.set(write, member.id(), hash);
                return null;
            });
            terminal.out().println("The passphrase of " + member.name() + " is set.");
            return 0;
        }
    }

    private List<CrewMember> crew(Db db) {
        LocalDate today = LocalDate.now(
                terminal.clock().withZone(db.read(SettingsStore::get).zone()));
        return CrewMember.present(db.read(CrewMemberStore.TABLE::values), today);
    }

    private String typed() throws Failure {
        String first = terminal.secrets().line("Passphrase").orElse("");
        if (terminal.secrets().typed()
                && !terminal.secrets().line("Once more").orElse("").equals(first)) {
            throw Failure.fault("The two are not the same. Nothing was changed.");
        }
        return first;
    }
}
