package unthrum.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import unthrum.audit.Audit;
import unthrum.audit.Auditor;
import unthrum.built.JobReader;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;

/** Reads as-built files and audits them. */
final class Jobs {
    private Jobs() {
    }

    static Audit audit(Path file) {
        Knowledge knowledge = Knowledge.load();
        Catalogue catalogue = Catalogue.load();
        return new Auditor(knowledge, catalogue).audit(new JobReader(knowledge, catalogue, LocalDate.now()).read(file));
    }
}
