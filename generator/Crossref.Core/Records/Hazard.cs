namespace Crossref.Core.Records;

/// <summary>What can hurt somebody at an assembly. The texts are common practice in the trade, no source unless one is named.</summary>
/// <param name="Id">The word written under <c>cautions</c>.</param>
/// <param name="Name">The word pages show.</param>
/// <param name="Advice">What to do, in a sentence or two.</param>
public sealed record Hazard(string Id, string Name, string Advice)
{
    /// <summary>Every hazard that has a text.</summary>
    public static IReadOnlyList<Hazard> All { get; } =
    [
        new("heat", "Burns", "Rollers reach about 200 °C. Let the unit cool an hour or more, then measure before touching."),
        new("mains", "Mains voltage", "Isolate, lock, and prove dead with a tester that was proved before and after. Follow the local code; where the law asks for a licensed electrician, call one."),
        new("stored-charge", "Stored charge", "Capacitors stay charged after the plug is out. Wait as the maker says, then prove dead."),
        new("high-voltage", "High voltage", "Charge and transfer units carry kilovolts while the machine runs. Never defeat an interlock, not even to test."),
        new("quartz", "Quartz", "Eye protection and clean gloves. A finger mark on the quartz shortens the lamp's life; a broken tube cuts."),
        new("blade", "Blades", "Cover the edge before the hand goes near. Guards of a cutter follow EN 1010-3; do not run without them."),
        new("nip", "Nip point", "Turn rollers by hand with the drive released and the plug out. Keep sleeves, hair and gloves away from the nip."),
        new("spring", "Springs under load", "Release the pressure lever first and hold the spring while its hook comes off."),
        new("toner", "Toner dust", "Damp cloth or a filtered antistatic vacuum, never a household one. Cold water on skin."),
        new("ozone", "Ozone", "Air the room; a spent carbon filter lets ozone through. The US workplace limit is 0.1 ppm (OSHA)."),
        new("lifting", "Weight", "Two people, and a cleared bench before the unit comes out."),
    ];

    /// <summary>The hazard of that word; one without a text when nobody has written one yet.</summary>
    public static Hazard Of(string id) => All.FirstOrDefault(h => h.Id == id) ?? new Hazard(id, id, "");
}
