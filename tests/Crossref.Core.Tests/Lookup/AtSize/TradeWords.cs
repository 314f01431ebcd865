namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>The words that names and notes of a large library are made from: a trade's own, several hundred.</summary>
public static class TradeWords
{
    public static IReadOnlyList<string> Makers { get; } = ["Tarrock", "Velm", "Ostrin"];

    /// <summary>Kinds of part, each with the nouns that its names begin with.</summary>
    public static IReadOnlyList<(string Kind, string[] Nouns)> Kinds { get; } =
    [
        ("bearing", List("bearing|ball bearing|needle bearing|flanged bearing|thrust bearing|roller clutch bearing|pillow block")),
        ("gear", List("gear|pinion|idler gear|worm gear|worm wheel|bevel gear|sector gear|ratchet wheel|stepped gear")),
        ("roller", List("roller|feed tyre|idler roller|nip roller|pressure roller|drive roller|web roller|brush roller")),
        ("belt", List("belt|toothed belt|flat belt|delivery band|transfer belt|round belt|suction belt")),
        ("sleeve", List("sleeve|fixing film|bush|plain bush|spacer tube|collar|heat sleeve")),
        ("spring", List("spring|tension spring|compression spring|torsion spring|leaf spring|wave washer")),
        ("clutch", List("clutch|electromagnetic clutch|one-way clutch|brake|torque limiter|spring clutch")),
        ("lamp", List("lamp|heat lamp|quartz heater|exposure lamp|erase lamp|indicator lamp")),
        ("filter", List("filter|ozone filter|dust filter|suction filter|air filter pad")),
        ("blade", List("blade|cleaning blade|doctor blade|trimmer knife|counter knife|perforating wheel|creasing matrix")),
        ("claw", List("claw|stripper finger|picker finger|separation claw|gripper")),
        ("switch", List("switch|interlock switch|photo sensor|reflective sensor|reed switch|actuator flag")),
        ("board", List("board|driver board|power supply|sensor board|relay board|lamp regulator")),
        ("thermistor", List("thermistor|contact thermistor|thermopile")),
        ("cutout", List("cut-out|thermal fuse|thermostat")),
        ("other", List("cover|bracket|shaft|hinge|guide plate|hose|nozzle|solenoid|stepper motor|fan|pad|cam|lever|link|pawl|knob|foot|seal|felt wick|detent|carriage|side plate|cable harness|rivet|grub screw")),
    ];

    public static IReadOnlyList<string> Assemblies { get; } = List(
        "fold head|feed table|fixing unit|drum unit|developer unit|transfer unit|duplex path|delivery|paper tray|stitch head|" +
        "trimmer|glue unit|cover feeder|stacker|vacuum unit|main drive|registration unit|optics|waste toner path|jogger");

    public static IReadOnlyList<string> Places { get; } = List(
        "fold roller|second fold roller|third fold roller|feed roller|pickup roller|separation roller|registration roller|exit roller|" +
        "fixing roller|heat roller|transfer drum|photo drum|cleaning brush|developer sleeve|toner hopper|toner auger|waste auger|" +
        "paper tray|tray lift|side guide|back gauge|reverse gate|duplex gate|knife carriage|knife clamp|perforating shaft|creasing shaft|" +
        "fold plate|fold knife|delivery band|suction drum|vacuum pump|air knife|blower|jogger arm|stacker table|stitch head|clinch arm|" +
        "wire feed|staple cartridge|glue pot|glue roller|milling head|nip plate|cover gripper|book carriage|main drive|intermediate shaft|" +
        "handwheel|encoder disc|scanner carriage|mirror carriage|lens rail|corona wire|charge roller|erase bar|counter drive|door latch|" +
        "interlock|cooling duct|exhaust|control panel|foot pedal|batch counter|slitter|deflector|tape bridge|marking wheel");

    public static IReadOnlyList<string> Sides { get; } = List(
        "front|rear|upper|lower|left|right|inner|outer|operator side|drive side|infeed|outfeed|inboard|outboard|middle|short|long|narrow|wide");

    public static IReadOnlyList<string> Features { get; } = List(
        "steel|hardened|stainless|brass|bronze|nylon|acetal|fibre|felt|rubber|silicone|urethane|cork|ceramic|aluminium|cast iron|sintered|" +
        "flanged|shielded|sealed|slotted|keyed|splined|knurled|grooved|threaded|tapered|stepped|crowned|perforated|coated|anodised|" +
        "blackened|plated|ground|magnetic|insulated|split|press fit|two-piece|self-aligning|left-handed|right-handed|low friction|heat resistant");

    /// <summary>What the shop calls things when it does not use their names.</summary>
    public static IReadOnlyList<string> Nicknames { get; } = List(
        "squeaker|grey wheel|white cog|the biscuit|banana|dog bone|little pulley|race|hockey stick|comb|tongue|spider|horn|mushroom|" +
        "coffin|hat|saddle|half moon|candle|pigtail|boot|puck|doughnut|tombstone|wishbone|cheese|collar stop|ear|duck bill|snail");

    /// <summary>Words of notes, in the order of how often people write them.</summary>
    public static IReadOnlyList<string> Notes { get; } =
    [
        .. ("worn|after|with|when|check|shaft|grease|dry|runs|clean|fits|loose|tight|noise|replace|screw|side|dust|old|new|cracked|paper|toner|" +
        "bench|turn|slow|warm|cold|wear|tooth|teeth|groove|play|rub|slip|jam|skew|mark|line|streak|smear|squeal|rattle|click|hum|smell|" +
        "burnt|bent|broken|chipped|glazed|swollen|sticky|oily|rusty|pitted|scored|polished|stretched|frayed|torn|seized|stiff|free|" +
        "adjust|align|shim|washer|circlip|pin|key|nut|bolt|plate|cover|hinge|spring|tension|torque|pressure|heat|film|nip|gap|edge|" +
        "corner|fold|crease|batch|sheet|heavy|light|stock|coated|recycled|envelope|card|booklet|cover stock|humid|winter|summer|Monday|" +
        "twice|often|seldom|never|always|before|during|until|between|behind|under|over|beside|through|against|towards|" +
        "remove|refit|swap|measure|mark first|photograph|soak|wipe|blow out|vacuum|lubricate|degrease|press|pull|tap|file|stone|polish|" +
        "spare|drawer|cupboard|rack|bin|supplier|order|wait|cheap|dear|copy|original|markings|label|stamp|letters|revision|later|earlier|" +
        "batch code|hub|bore|flange|collar|keyway|journal|boss|rim|web|lip|seal|shield|cage|ball|race|roller|belt|pulley|idler|clutch|" +
        "brake|coil|plug|wire|connector|solder|fuse|lamp|reflector|mirror|lens|sensor|flag|switch|relay|motor|fan|filter|foam|felt|brush")
        .Split('|').SelectMany(words => words.Split(' ')).Distinct(),
    ];

    /// <summary>Symptoms, each with what to look at first.</summary>
    public static IReadOnlyList<(string Name, string Checks)> Symptoms { get; } =
    [
        .. List(
            "squeal:turn by hand with the drive released|marks every 94 mm:measure the distance of three marks|skewed sheets:compare both side guides|" +
            "double feed:look at the separation pad|no feed:listen for the pickup clutch|toner smears:rub a warm sheet|grey background:wipe the corona wire|" +
            "white lines along:clean the exposure slit|black lines along:look at the cleaning blade edge|blank pages:is the shutter open|" +
            "burning smell:stop and unplug|lamp does not light:let it cool then measure the cut-out|overheats:is the duct clear|" +
            "crumpled at the exit:look for a worn stripper finger|fold drifts:check the fold plate stop|fold not square:turn the deflector screw|" +
            "rattle when empty:hold the idler and listen|knocks once a turn:mark a tooth and watch|belt runs off:measure the tension both sides|" +
            "staple bent:look at the clinch arm|staple missing:clean the wire feed|cut not straight:check the back gauge|knife stays down:pull the plug first|" +
            "glue strings:the pot is too cold|cover loose:look at the nip plate|counter does not count:clean the flag|stops after ten sheets:blow out the sensor|" +
            "door error:press the interlock by hand|hum but no motion:is the brake free|slow to warm:measure the mains|paper dust everywhere:change the suction filter|" +
            "static clings:earth the brush|wrinkles on envelopes:reduce the nip pressure|ghost image:look at the erase lamp|dog ears:look at the deflector")
            .Select(line => line.Split(':')).Select(pair => (pair[0], pair[1])),
    ];

    private static string[] List(string words) => words.Split('|');
}
