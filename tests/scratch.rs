use leafwright::*;
#[test]
fn scratch() {
    let path =
        std::env::var("WRIGHT").unwrap_or("examples/potting-bench/potting-bench.wright".into());
    let text = std::fs::read_to_string(&path).unwrap();
    let (sources, file) = source::Sources::single(&path, &text);
    let tree = syntax::parse(&sources, file);
    let mut findings = tree.findings;
    let model = model::resolve(&tree.value, &Default::default());
    findings.append(model.findings);
    let build = build::assemble(&model.value);
    findings.append(build.findings);
    let sound = rules::check(
        &rules::Facts {
            model: &model.value,
            build: &build.value,
        },
        &findings,
    );
    findings.append(sound.findings);
    println!(
        "{}",
        finding::print::print(&findings.sorted(), &sources, finding::print::Colour::Plain)
    );
    for part in &build.value.parts {
        let s = part.size().map(|l| l.mm());
        println!(
            "{:3} {:15} {}+{}  {:?} features {}",
            part.label,
            part.title,
            part.count,
            part.mirrored,
            s,
            part.features.len()
        );
    }
    for h in &build.value.hardware {
        println!("{} {}", h.title, h.count);
    }
    println!(
        "{:?}",
        build
            .value
            .overall
            .map(|o| o.map(|i| (i.low.mm(), i.high.mm())))
    );
}
