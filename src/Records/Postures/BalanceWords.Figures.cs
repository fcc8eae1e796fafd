using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures;

public static partial class BalanceWords
{
    /// <summary>Every side it could tip over, by name, the weakest first; the rounded corners of prints are left out.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="balance">Its balance.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>Empty for a base that is a point.</returns>
    public static IReadOnlyList<NamedSide> Sides(SettledPosture settled, PostureBalance balance, CultureInfo culture)
    {
        var (margin, contacts, trunk) = (balance.Whole.Margin, Contacts(settled), Trunk(settled));
        return [.. margin.Edges.Select((edge, i) => (Side: BalanceSide.Of(edge, contacts, trunk), Edge: edge, IsWeakest: i == margin.WeakestEdge))
            .Where(s => s.IsWeakest || !s.Side.IsCorner).GroupBy(s => Place(s.Side))
            .Select(sides => sides.MinBy(s => (!s.IsWeakest, s.Edge.MarginH))).Select(s => new NamedSide(Side(s.Side, culture), s.Edge, s.IsWeakest))
            .OrderByDescending(s => s.IsWeakest).ThenBy(s => s.Edge.MarginH)];
    }

    // Sides along the same end of a left and a right part are one place: the heels, whether of one foot or from foot to foot.
    private static object Place(BalanceSide side) => side.First.Part != side.Second.Part ? (side.First, side.Second)
        : side.End != PrintEnd.Side ? (side.First.Part, side.End) : (side.First.Part, side.Towards);

    /// <summary>What each contact carries, in words: "left hand: 31 % of the weight", with bounds where statics alone does not decide.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="balance">Its balance.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>One line a contact in their order; empty where nothing holds.</returns>
    public static IReadOnlyList<string> Shares(SettledPosture settled, PostureBalance balance, CultureInfo culture)
    {
        var contacts = Contacts(settled);
        return [.. balance.Whole.Loads.Shares.Select((share, i) => Share(Name(settled, contacts, i, culture), share, culture))];
    }

    /// <summary>What one contact carries, in words.</summary>
    /// <param name="name">The contact's name.</param>
    /// <param name="share">What it carries.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Share(string name, LoadShare share, CultureInfo culture) => share.MostFraction - share.LeastFraction < .005
        ? Sentence("Share", culture, name, share.ShareFraction)
        : Sentence("ShareWithBounds", culture, name, share.ShareFraction, share.LeastFraction, share.MostFraction);

    /// <summary>The names of all contacts, those of a second body marked so.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="culture">The reader's language.</param>
    public static IReadOnlyList<string> ContactNames(SettledPosture settled, CultureInfo culture)
    {
        var contacts = Contacts(settled);
        return [.. contacts.Select((_, i) => Name(settled, contacts, i, culture))];
    }

    /// <summary>On what the shares rest: statics alone, or an assumption that is named.</summary>
    /// <param name="basis">The basis.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Basis(LoadBasis basis, CultureInfo culture) => Text($"Basis{basis}", culture);

    /// <summary>The shape of the base: broad, narrow, or turning into a line.</summary>
    /// <param name="narrownessFraction">Smallest width over greatest length, 0 to 1. Own steps: a third and a sixth.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Narrowness(double narrownessFraction, CultureInfo culture) => Text(Step(narrownessFraction, "Narrow"), culture);

    /// <summary>The shape on the floor: for three contacts the triangle between their middles, else the base as a whole.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="balance">Its balance.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Shape(SettledPosture settled, PostureBalance balance, CultureInfo culture) => TriangleFraction(settled) is { } triangleFraction
        ? Text(Step(triangleFraction, "Triangle"), culture)
        : Narrowness(balance.Whole.Base.NarrownessFraction, culture);

    /// <summary>Height over longest side of the triangle between the middles of three contacts, as a class sees it: prints have no size in it.</summary>
    /// <param name="settled">On the floor.</param>
    /// <returns>0 for a line, .866 where all sides are equal; none where more or fewer than three parts touch.</returns>
    public static double? TriangleFraction(SettledPosture settled) => Contacts(settled) is { Length: 3 } three
        ? BaseOfSupport.Of([three[0].Middle, three[1].Middle, three[2].Middle]).NarrownessFraction
        : null;

    /// <summary>How many of a hundred small errors keep it balanced, the size of the errors said.</summary>
    /// <param name="tolerance">The tolerance.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Tolerance(BalanceTolerance tolerance, CultureInfo culture) =>
        Sentence("Tolerance", culture, Math.Round(100 * tolerance.HeldFraction), tolerance.Spread.ErrorDeg, tolerance.SampleCount);

    /// <summary>What a wall or a partner has to do for it; empty for a body alone.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Help(PostureBalance balance, CultureInfo culture)
    {
        if (balance.Wall is { } wall)
            return double.IsNaN(wall.PushFraction) ? Text("WallCannot", culture)
                : wall.PushFraction < .0005 ? Text("WallIdle", culture) : Sentence("WallPushes", culture, wall.PushFraction);
        if (balance.Pull is { IsHeld: true } pull)
            return Math.Abs(pull.GentlestFraction) < .0005 ? Text("PullIdle", culture)
                : Sentence(pull.GentlestFraction > 0 ? "Pulls" : "Pushes", culture, Math.Abs(pull.GentlestFraction));
        return balance.Carried is { IsHeld: true } carried
            ? Sentence("Carried", culture, Text($"Room{Room(Math.Max(0, carried.Margin.MarginH))}", culture)) : "";
    }

    private static string Step(double fraction, string of) => of + (fraction switch
    {
        < 1.0 / 6 => "Line",
        < 1.0 / 3 => "Strip",
        _ => "Broad",
    });

    private static string Name(SettledPosture settled, SettledContact[] contacts, int index, CultureInfo culture)
    {
        var name = Contact(contacts[index].Contact, culture);
        return index < settled.Body.Contacts.Count ? name : Sentence("OfPartner", culture, name);
    }
}
