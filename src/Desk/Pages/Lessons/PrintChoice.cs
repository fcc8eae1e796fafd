using System.Web;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>What to print of a lesson, and how, as the print page's address says it.</summary>
/// <param name="Kind">The document, one of <see cref="Kinds"/>.</param>
/// <param name="Values">The options by their names in the address; what is as usual is left out.</param>
public sealed record PrintChoice(string Kind, IReadOnlyDictionary<string, string> Values)
{
    /// <summary>The documents, in the order a lesson needs them.</summary>
    public static readonly IReadOnlyList<string> Kinds = ["sheets", "class", "observation", "lesson", "risk", "stations", "poster", "cues", "pack"];

    private static readonly string[] ForAll = ["size", "paper-language", "cream"];
    private static readonly string[] ForSheets = ["look", "two-sided", "wide-spacing", "signs", "spare", "spare-from"];

    /// <summary>Reads an address; an unknown document is the sheets.</summary>
    /// <param name="query">The part of the address after the question mark.</param>
    public static PrintChoice Of(string query)
    {
        var asked = HttpUtility.ParseQueryString(query);
        var kind = asked["kind"] is { } k && Kinds.Contains(k) ? k : Kinds[0];
        var values = asked.AllKeys.OfType<string>().Where(k => k != "kind" && Known.Contains(k)).ToDictionary(k => k, k => asked[k] ?? "");
        return new PrintChoice(kind, values);
    }

    private static IEnumerable<string> Known => [.. ForAll, .. ForSheets, "cards", "poster-size", "name-others"];

    /// <summary>The options that change this document.</summary>
    public IReadOnlyList<string> Options => Kind switch
    {
        "sheets" => [.. ForAll, .. ForSheets],
        "pack" => [.. ForAll, .. ForSheets, "cards", "name-others"],
        "stations" => [.. ForAll, "wide-spacing", "cards"],
        "poster" => [.. ForAll, "wide-spacing", "poster-size"],
        "cues" or "risk" => [.. ForAll, "wide-spacing"],
        "lesson" => [.. ForAll, "wide-spacing", "name-others"],
        _ => ["size", "paper-language"],
    };

    /// <summary>Whether an option changes this document.</summary>
    /// <param name="option">Its name in the address.</param>
    public bool Has(string option) => Options.Contains(option);

    /// <summary>Whether an option that is there or not is there.</summary>
    /// <param name="option">Its name in the address.</param>
    public bool IsOn(string option) => Values.GetValueOrDefault(option) is "1" or "on" or "true";

    /// <summary>What was chosen for an option, or what is usual.</summary>
    /// <param name="option">Its name in the address.</param>
    /// <param name="usual">What it is where nothing was chosen.</param>
    public string ValueOf(string option, string usual) => Values.GetValueOrDefault(option) is { Length: > 0 } value ? value : usual;

    /// <summary>Options chosen that this document has no use for: kept for the others.</summary>
    public IEnumerable<KeyValuePair<string, string>> Kept => Values.Where(v => !Has(v.Key));

    /// <summary>The print page's address for a document, with what was chosen.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="kind">The document.</param>
    public string PageOf(Guid lessonId, string kind) => $"/lessons/{lessonId}/print?{string.Join('&', [$"kind={kind}", .. Values.Select(Part)])}";

    /// <summary>The document's address.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="end">What of it: <c>.pdf</c> or <c>/preview</c>.</param>
    public string PrintOf(Guid lessonId, string end)
    {
        var query = string.Join('&', Values.Where(v => Has(v.Key)).Select(Part));
        return $"/print/lessons/{lessonId}/{Kind}{end}{(query.Length > 0 ? "?" : "")}{query}";
    }

    private static string Part(KeyValuePair<string, string> value) => $"{Uri.EscapeDataString(value.Key)}={Uri.EscapeDataString(value.Value)}";
}
