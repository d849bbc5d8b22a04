package unthrum.cli;

import java.nio.file.Path;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.*;
import unthrum.reading.YamlReader;
import unthrum.survey.Survey;

public final class Main {
    public static void main(String[] a) throws Exception {
        long t0 = System.nanoTime();
        Knowledge k = Knowledge.load();
        long t1 = System.nanoTime();
        Catalogue c = Catalogue.load();
        Survey s = YamlReader.read(Path.of(a[0]), Survey.class);
        long t2 = System.nanoTime();
        Plan plan = new Planner(k, c).plan(s);
        long t3 = System.nanoTime();
        for (PlannedPanel p : plan.panels()) {
            System.out.printf("%-28s %-10s %s  %.1f mm %.2f kg%n", p.name(), p.verdict(), p.layup(), p.layup().thickness() * 1e3, p.layup().mass());
            p.advice().outvoted().forEach(w -> System.out.println("     outvoted " + w.layer() + " " + w.place() + " by " + w.vetoes().get(0).reasons().get(0).rule().id()));
            if (a.length > 1 && p.name().equals(a[1])) p.advice().considered().forEach(x -> System.out.println("     " + x.material().material() + " " + x.chosen() + " " + x.best() + " " + x.rejectedBy().stream().map(j -> j.conclusion() + " <- " + j.reasons().get(0).rule().id()).toList()));
            p.advice().unserved().forEach(w -> System.out.println("     unserved " + w.layer() + " " + w.place()+" "+w.judgement().reasons().get(0).rule().id()));
            p.advice().holds().forEach(w -> System.out.println("     hold " + w.conclusion()));
            p.advice().questions().forEach(w -> System.out.println("     ask " + w.conclusion()));
            p.leftOut().forEach(w -> System.out.println("     left out " + w.material().material()+ " " + w.patch() + " "+ w.why()));
        }
        System.out.println(plan.totals());
        plan.shopping().forEach(x -> System.out.println(x.material().material() + " " + x.area() + " " + x.packs() + " " + x.price()));
        System.err.printf("knowledge %d ms, read %d ms, plan %d ms%n", (t1 - t0) / 1000000, (t2 - t1) / 1000000, (t3 - t2) / 1000000);
    }
}
