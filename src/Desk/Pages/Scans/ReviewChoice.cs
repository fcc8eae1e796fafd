namespace Slantwise.Desk.Pages.Scans;

/// <summary>One answer to a box, and the keys that give it.</summary>
/// <param name="Value">The value; none for "nothing there".</param>
/// <param name="Label">What the button says.</param>
/// <param name="Detail">More of it, such as a level's name; empty where there is none.</param>
/// <param name="Keys">Its keys as they are shown, the first one first: "Enter", "Y", "2".</param>
/// <param name="IsShown">Whether it is what the picture seems to show.</param>
public sealed record ReviewChoice(decimal? Value, string Label, string Detail, IReadOnlyList<string> Keys, bool IsShown)
{
    /// <summary>The keys as the browser names them, in small letters, apart by spaces.</summary>
    public string BrowserKeys => string.Join(' ', Keys).ToLowerInvariant();
}
