using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Paper.Sheets;

/// <summary>The figures of the levels that show a posture, all from one view and at one scale so that they can be compared.</summary>
internal sealed class LevelFigures
{
    private readonly Dictionary<string, SettledPosture> _settled = new(StringComparer.Ordinal);
    private readonly FigureView _view;
    private readonly double _heightMm;

    public LevelFigures(IEnumerable<OfferedLevel> offered, double heightMm)
    {
        _heightMm = heightMm;
        foreach (var key in offered.Select(o => o.Level.Posture).OfType<string>())
            if (PostureLibrary.Find(key) is { } posture) _settled.TryAdd(key, posture.Settle());
        _view = PostureFigure.SharedView(_settled.Values);
    }

    /// <summary>Whether any level shows one.</summary>
    public bool IsAny => _settled.Count > 0;

    /// <summary>A level's figure with its top left corner at a place; nothing where it shows none.</summary>
    public IEnumerable<Shape> At(OfferedLevel level, double leftMm, double topMm, double widthMm)
    {
        if (level.Level.Posture is not { } key || !_settled.TryGetValue(key, out var settled)) return [];
        var box = new FigureOptions(_view, widthMm, _heightMm);
        var drawn = PostureFigure.Of(settled, box with { StatureMm = PostureFigure.FittingMm([.. _settled.Values], box) }, "");
        return drawn.Scene.Shapes.Select(shape => ShapeMove.By(shape, leftMm, topMm));
    }
}
