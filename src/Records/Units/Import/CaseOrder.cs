using System.Text.Json;

namespace Slantwise.Records.Units.Import;

/// <summary>Puts the items of a package into the order and depth its associations give them.</summary>
internal sealed class CaseOrder
{
    // Frameworks nest four or five deep.
    private const int MostDepth = 12;

    private readonly Dictionary<string, OutcomeCandidate> _items;
    private readonly Dictionary<string, (string Parent, double Sequence)> _parents = new(StringComparer.OrdinalIgnoreCase);

    public CaseOrder(JsonElement root, Dictionary<string, OutcomeCandidate> items)
    {
        _items = items;
        if (!root.TryGetProperty("CFAssociations", out var list) || list.ValueKind != JsonValueKind.Array) return;
        foreach (var link in list.EnumerateArray().Where(l => l.ValueKind == JsonValueKind.Object && CaseReader.Text(l, "associationType") == "isChildOf"))
        {
            var (child, parent) = (NodeOf(link, "originNodeURI"), NodeOf(link, "destinationNodeURI"));
            if (!items.ContainsKey(child)) continue;
            var sequence = link.TryGetProperty("sequenceNumber", out var number) && number.ValueKind == JsonValueKind.Number && number.TryGetDouble(out var given) ? given : double.MaxValue;
            _parents.TryAdd(child, (parent, sequence));
        }
    }

    /// <summary>Every item once: each after what it stands under, siblings by their sequence, then as in the file.</summary>
    public IReadOnlyList<OutcomeCandidate> Candidates()
    {
        var children = _items.Keys.Where(k => ParentOf(k) is not null).ToLookup(k => ParentOf(k)!, StringComparer.OrdinalIgnoreCase);
        var ordered = new List<OutcomeCandidate>();
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        void Walk(string key, int depth)
        {
            if (!seen.Add(key)) return;
            ordered.Add(_items[key] with { Depth = Math.Min(depth, MostDepth), HasParts = children[key].Any() });
            // What is nested deeper than any framework is listed after the rest, and no stack is deep enough for a chain of thousands.
            if (depth <= MostDepth) foreach (var child in children[key].OrderBy(SequenceOf).ThenBy(k => _items[k].Place)) Walk(child, depth + 1);
        }
        foreach (var top in _items.Keys.Where(k => ParentOf(k) is null).OrderBy(SequenceOf).ThenBy(k => _items[k].Place)) Walk(top, 0);
        // Items that stand under each other in a ring have no top.
        foreach (var rest in _items.Keys.OrderBy(k => _items[k].Place)) Walk(rest, 0);
        return ordered;
    }

    // The document itself is no item: what stands under it is at the top.
    private string? ParentOf(string key) => _parents.TryGetValue(key, out var link) && _items.ContainsKey(link.Parent) && !link.Parent.Equals(key, StringComparison.OrdinalIgnoreCase) ? link.Parent : null;

    private double SequenceOf(string key) => _parents.TryGetValue(key, out var link) ? link.Sequence : double.MaxValue;

    private static string NodeOf(JsonElement link, string name) =>
        link.TryGetProperty(name, out var node) && node.ValueKind == JsonValueKind.Object ? CaseReader.Text(node, "identifier") : CaseReader.Text(link, name);
}
