namespace Slantwise.Desk.Pages.Floor;

/// <summary>The addresses that devices open. What joins them stands after the <c>#</c>: a browser keeps that to itself.</summary>
public static class FloorLinks
{
    /// <summary>Where a pupil joins by the code on the wall.</summary>
    /// <param name="at">The program's address in the network.</param>
    /// <param name="code">The lesson's code.</param>
    public static string Join(Uri at, string code) => $"{At(at)}/floor/#join={code}";

    /// <summary>The teacher's page.</summary>
    /// <param name="at">The program's address.</param>
    /// <param name="ticket">A ticket for it.</param>
    public static string Teacher(Uri at, string ticket) => $"{At(at)}/floor/teacher#ticket={ticket}";

    /// <summary>The page for the projector.</summary>
    /// <param name="at">The program's address.</param>
    /// <param name="ticket">A ticket for it.</param>
    /// <param name="code">The lesson's code, which it shows to the class.</param>
    public static string Board(Uri at, string ticket, string code) => $"{At(at)}/floor/board#ticket={ticket}&code={code}";

    /// <summary>What is typed into a browser, in as few letters as it takes.</summary>
    /// <param name="at">The program's address.</param>
    public static string Typed(Uri at) => at.Scheme == Uri.UriSchemeHttp ? $"{at.Authority}/floor" : $"{At(at)}/floor";

    private static string At(Uri at) => at.GetLeftPart(UriPartial.Authority);
}
