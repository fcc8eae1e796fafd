using System.Globalization;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Postures.Figures;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Floor.Bundles;

/// <summary>The figures of a bundle's levels, each posture once, all from one view and at one scale so that levels can be compared side by side.</summary>
internal sealed class BundleFigures
{
    // The screen scales a drawing to its place. At this size lines are clear on a tile as wide as a thumb is long; measured on the library, 12.6 kB a figure, 2.8 kB compressed.
    private const double BoxMm = 30;

    private readonly SortedDictionary<string, SettledPosture> _settled = new(StringComparer.Ordinal);

    public BundleFigures(IEnumerable<Level> levels)
    {
        foreach (var key in levels.Select(l => l.Posture).OfType<string>())
            if (BundleDrawings.Find(key) is { } settled) _settled.TryAdd(key, settled);
    }

    public bool IsAny => _settled.Count > 0;

    /// <summary>The figure of a level; none where it names no posture of the library.</summary>
    public string? KeyOf(Level level) => level.Posture is { } key && _settled.ContainsKey(key) ? key : null;

    /// <summary>The drawings with their words, by key.</summary>
    public IReadOnlyList<BundleFigure> In(CultureInfo language)
    {
        if (!IsAny) return [];
        var box = new FigureOptions(PostureFigure.SharedView(_settled.Values), BoxMm, BoxMm);
        box = box with { StatureMm = PostureFigure.FittingMm([.. _settled.Values], box) };
        return [.. _settled.Keys.Select(key => new BundleFigure(key, BundleDrawings.Draw(key, box), BundleDrawings.Describe(key, language)))];
    }

    /// <summary>Their words in a language, by key.</summary>
    public IReadOnlyDictionary<string, string> Descriptions(CultureInfo language) =>
        _settled.Keys.ToDictionary(key => key, key => BundleDrawings.Describe(key, language), StringComparer.Ordinal);
}
