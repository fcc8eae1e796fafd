using System.Text.Json;
using Slantwise.Records.Checks;

namespace Slantwise.Records.Units.Import;

/// <summary>Reads a CASE package: a document, its items, and which item stands under which.</summary>
/// <remarks>Source: [CASE2017] CFPackage, CFDocument, CFItem, CFAssociation, CFLicense; versions 1.0 and 1.1 name these alike.</remarks>
internal sealed class CaseReader(string fileName)
{
    private const int MostLicenceCharacters = 300;
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 64 };

    private readonly FilePlace _file = new(fileName);
    private readonly List<Finding> _findings = [];

    public OutcomeReading Read(string text)
    {
        try
        {
            using var json = JsonDocument.Parse(text, Strict);
            var root = json.RootElement;
            // Some services wrap the package once more.
            if (root.ValueKind == JsonValueKind.Object && root.TryGetProperty("CFPackage", out var inner)) root = inner;
            return root.ValueKind == JsonValueKind.Object && root.TryGetProperty("CFItems", out var items) && items.ValueKind == JsonValueKind.Array
                ? Package(root, items)
                : Nothing(Finding.Refused("OutcomeFileNoPackage", _file));
        }
        catch (JsonException broken)
        {
            // The parser counts from 0, editors from 1.
            return Nothing(Finding.Refused("OutcomeFileNotJson", _file, (broken.LineNumber ?? 0) + 1));
        }
    }

    private OutcomeReading Nothing(Finding why) => new() { FileName = fileName, Standing = LicenceStanding.Unnamed, Findings = [why] };

    private OutcomeReading Package(JsonElement root, JsonElement items)
    {
        var document = root.TryGetProperty("CFDocument", out var named) && named.ValueKind == JsonValueKind.Object ? named : default;
        var framework = Text(document, "title");
        if (framework.Length == 0) _findings.Add(Finding.Flagged("OutcomeFileNoTitle", _file));
        var count = items.GetArrayLength();
        if (count == 0) _findings.Add(Finding.Refused("OutcomeFileNoItem", _file));
        if (count > OutcomeFiles.MostCandidates) _findings.Add(Finding.Flagged("OutcomeFileMany", _file, count, OutcomeFiles.MostCandidates));

        var read = new Dictionary<string, OutcomeCandidate>(StringComparer.OrdinalIgnoreCase);
        List<string> rights = [.. RightsOf(document), .. LicencesOf(root)];
        var number = 0;
        foreach (var item in items.EnumerateArray().Take(OutcomeFiles.MostCandidates))
        {
            var place = new FilePlace(fileName, null, null);
            number++;
            if (item.ValueKind != JsonValueKind.Object)
            {
                _findings.Add(Finding.Refused("OutcomeFileItemStrange", place, number));
                continue;
            }
            var identifier = Text(item, "identifier");
            var code = Text(item, "humanCodingScheme");
            var statement = Text(item, "fullStatement");
            if (identifier.Length == 0) identifier = $"{framework}\u001F{code}\u001F{statement}";
            var id = Guid.TryParse(identifier, out var given) && given != Guid.Empty ? given : OutcomeFiles.IdOf("outcome", framework, identifier);
            var candidate = OutcomeFiles.Candidate(place, id, number, code, statement, Text(item, "abbreviatedStatement"), framework)
                with { Kind = Text(item, "CFItemType"), Years = Listed(item, "educationLevel") };
            if (read.TryAdd(identifier, candidate)) rights.AddRange(RightsOf(item));
            else _findings.Add(Finding.Flagged("OutcomeFileItemTwice", place, number));
        }
        return new OutcomeReading
        {
            FileName = fileName,
            Framework = framework,
            Creator = Text(document, "creator"),
            Licence = string.Join("; ", rights.Distinct().Take(3)),
            Standing = OpenLicence.Of(rights),
            Candidates = new CaseOrder(root, read).Candidates(),
            Findings = _findings,
        };
    }

    // A licence is a link with a title and an address; some files give it as plain text, or say their rights beside it.
    private static IEnumerable<string> RightsOf(JsonElement owner)
    {
        if (owner.ValueKind != JsonValueKind.Object) yield break;
        if (owner.TryGetProperty("licenseURI", out var licence))
        {
            var said = licence.ValueKind == JsonValueKind.Object ? OutcomeFiles.Line($"{Text(licence, "title")} {Text(licence, "uri")}") : Text(owner, "licenseURI");
            if (said.Length > 0) yield return Short(said);
        }
        if (Text(owner, "rights") is { Length: > 0 } rights) yield return Short(rights);
    }

    private static IEnumerable<string> LicencesOf(JsonElement root)
    {
        if (!root.TryGetProperty("CFDefinitions", out var definitions) || definitions.ValueKind != JsonValueKind.Object
            || !definitions.TryGetProperty("CFLicenses", out var licences) || licences.ValueKind != JsonValueKind.Array) yield break;
        foreach (var licence in licences.EnumerateArray().Where(l => l.ValueKind == JsonValueKind.Object).Take(20))
        {
            var said = OutcomeFiles.Line($"{Text(licence, "title")} {Text(licence, "licenseText")}");
            if (said.Length > 0) yield return Short(said);
        }
    }

    private static string Listed(JsonElement owner, string name) =>
        owner.TryGetProperty(name, out var list) && list.ValueKind == JsonValueKind.Array
            ? string.Join(", ", list.EnumerateArray().Select(Text).Where(t => t.Length > 0).Take(20))
            : Text(owner, name);

    private static string Short(string text) => text.Length <= MostLicenceCharacters ? text : text[..MostLicenceCharacters];

    internal static string Text(JsonElement owner, string name) =>
        owner.ValueKind == JsonValueKind.Object && owner.TryGetProperty(name, out var value) ? Text(value) : "";

    private static string Text(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.String) return "";
        try
        {
            return OutcomeFiles.Line(value.GetString()!);
        }
        catch (InvalidOperationException)
        {
            // Half of a character written as an escape: valid JSON, and no text.
            return "";
        }
    }
}
