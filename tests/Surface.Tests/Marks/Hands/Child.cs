using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>Fills a form in as a child does: mostly in one way, with one pen, with slips. The same seed marks the same fields on any print and before any camera.</summary>
/// <remarks>
/// Shares of pens, ways and slips are guesses that spread the cases evenly enough to measure each; no source. Hard is a child that hardly presses the pencil
/// (1 in 3), rubs out badly, draws farther off, and lets writing poke in deeper.
/// </remarks>
internal sealed class Child
{
    private static readonly MarkStyle[] Ways =
        [MarkStyle.Tick, MarkStyle.LongTick, MarkStyle.Cross, MarkStyle.Disc, MarkStyle.Half, MarkStyle.Scribble, MarkStyle.Dot, MarkStyle.Dash, MarkStyle.Ring];

    private static readonly double[] Shares = [.24, .1, .22, .14, .04, .1, .04, .08, .04];

    private readonly SheetLayout _form;
    private readonly Severity _severity;
    private readonly Luck _luck;
    private readonly MarkPen _pen;
    private readonly MarkStyle _habit;
    private readonly double _penMm;
    private readonly double _scale;
    private readonly Ink _ink;
    private readonly FieldTruth[] _truths;

    private Child(SheetLayout form, ulong seed, Severity severity)
    {
        (_form, _severity, _luck) = (form, severity, new Luck(seed, 21));
        _pen = severity != Severity.Fair && _luck.Happens(.33) ? MarkPen.Faint : _luck.Pick(MarkPen.Usual);
        _penMm = _pen.WidthOf(_luck);
        _ink = _pen.InkOf(_luck);
        _habit = Ways[_luck.Weighted(Shares)];
        _scale = Math.Min(1, form.Fields[0].WidthMm / 5);
        _truths = [.. form.Fields.Select(_ => new FieldTruth(MarkStyle.None, Trouble.None))];
    }

    public static FilledForm Fill(Leaf print, SheetLayout form, ulong seed, Severity severity)
    {
        var leaf = print.Copy();
        var child = new Child(form, seed, severity);
        child.Mark(leaf);
        child.Write(leaf);
        child.Dot(leaf);
        return new(leaf, child._pen, child._truths);
    }

    private void Mark(Leaf leaf)
    {
        var numbered = _form.Fields.Select((field, index) => (field, index)).ToList();
        foreach (var group in numbered.Where(f => f.field.Group.Length > 0).GroupBy(f => f.field.Group))
        {
            var fields = group.Select(f => f.index).ToList();
            if (_luck.Happens(.15)) continue;
            var chosen = _luck.Index(fields.Count);
            if (_pen.IsPencil && _luck.Happens(.06))
            {
                var wrong = (chosen + 1) % fields.Count;
                RubOut(leaf, fields[wrong]);
            }
            if (_luck.Happens(.01) && chosen + 1 < fields.Count) Bridge(leaf, fields[chosen], fields[chosen + 1]);
            else MarkOne(leaf, fields[chosen]);
        }
        foreach (var (field, index) in numbered.Where(f => f.field.Group.Length == 0))
        {
            if (_luck.Happens(.45)) MarkOne(leaf, index);
            else if (_pen.IsPencil && _luck.Happens(.04)) RubOut(leaf, index);
        }
    }

    private void MarkOne(Leaf leaf, int index)
    {
        var style = _luck.Happens(.7) ? _habit : Ways[_luck.Weighted(Shares)];
        var isSloppy = style is not (MarkStyle.Ring or MarkStyle.Dot) && _luck.Happens(.08);
        var off = isSloppy ? (_severity == Severity.Fair ? _luck.Between(.5, 1) : _luck.Between(.8, 1.5)) * _scale : Math.Abs(_luck.Normal(.2)) * _scale;
        // A wide pen makes a mark of its own accord; it would not be held over a field half its size otherwise.
        var penMm = Math.Min(_penMm, _form.Fields[index].WidthMm * .45) * _luck.Between(.85, 1.15);
        var strokes = MarkShapes.Of(style, _form.Fields[index], new Point(off, 0).Turned(_luck.Between(0, 2 * Math.PI)), penMm, _luck);
        leaf.Draw(strokes, _ink with { DarkFraction = _ink.DarkFraction * _luck.Between(.9, 1.05) }, _luck.Bits());
        _truths[index] = new(style, isSloppy ? Trouble.Sloppy : Trouble.None);
        foreach (var other in Near(index, .45))
            if (_truths[other] is { Style: MarkStyle.None, Trouble: Trouble.None }) _truths[other] = new(MarkStyle.None, Trouble.Neighbour);
    }

    private void RubOut(Leaf leaf, int index)
    {
        var style = _luck.Pick([MarkStyle.Tick, MarkStyle.Cross, MarkStyle.Disc, MarkStyle.Scribble]);
        var strokes = MarkShapes.Of(style, _form.Fields[index], default, _penMm, _luck);
        var left = _severity == Severity.Fair ? _luck.Between(.05, .16) : _luck.Between(.14, .3);
        Rubber.Rub(leaf, _form.Fields[index], strokes, _ink, left, _luck);
        _truths[index] = new(MarkStyle.None, Trouble.RubbedOut);
    }

    private void Bridge(Leaf leaf, int first, int second)
    {
        leaf.Draw([MarkShapes.Bowed(MiddleOf(first), MiddleOf(second), _penMm, _luck)], _ink, _luck.Bits());
        _truths[first] = _truths[second] = new(MarkStyle.Bridge, Trouble.None);
    }

    // Words of loops and stems; now and then a stem reaches into a field beside the box.
    private void Write(Leaf leaf)
    {
        foreach (var box in _form.Writings)
        {
            if (!_luck.Happens(.7)) continue;
            var strokes = new List<Stroke>();
            var heightMm = 3.2 * _scale;
            var widthMm = box.WidthMm * _luck.Between(.3, 1);
            for (var x = 1.0; x < widthMm - heightMm; x += heightMm * .8)
            {
                var foot = new Point(box.XMm + x, box.YMm + box.HeightMm * .6 + _luck.Normal(.3));
                strokes.Add(MarkShapes.Bowed(foot, foot - new Point(-.2 * heightMm, heightMm * _luck.Between(.5, 1.2)), _penMm * .9, _luck));
                strokes.Add(Stroke.Ellipse(foot + new Point(.3 * heightMm, -.25 * heightMm), .25 * heightMm, .3 * heightMm, _penMm * .9));
            }
            if (strokes.Count > 0) leaf.Draw(strokes, _ink, _luck.Bits());
        }
        for (var index = 0; index < _truths.Length; index++)
            if (_truths[index] is { Style: MarkStyle.None, Trouble: Trouble.None } && _luck.Happens(.015)) Poke(leaf, index);
    }

    private void Poke(Leaf leaf, int index)
    {
        var field = _form.Fields[index];
        var deep = (_severity == Severity.Fair ? _luck.Between(.02, .15) : _luck.Between(.15, .35)) * field.HeightMm;
        var foot = new Point(field.XMm + field.WidthMm * _luck.Between(.2, .8), field.YMm + field.HeightMm);
        leaf.Draw([MarkShapes.Bowed(foot + new Point(_luck.Normal(.3), 1.8 * _scale), foot - new Point(0, deep), Math.Min(_penMm, .9) * .9, _luck)], _ink, _luck.Bits());
        _truths[index] = new(MarkStyle.None, Trouble.Writing);
    }

    private void Dot(Leaf leaf)
    {
        for (var index = 0; index < _truths.Length; index++)
        {
            if (_truths[index] is not { Style: MarkStyle.None, Trouble: Trouble.None } || !_luck.Happens(.02)) continue;
            var at = MiddleOf(index) + new Point(_luck.Between(0, .8) * _form.Fields[index].WidthMm / 2, 0).Turned(_luck.Between(0, 6.28));
            var widthMm = (_severity == Severity.Fair ? _luck.Between(.2, .45) : _luck.Between(.4, .58)) * _scale;
            leaf.Draw([new([at, at], widthMm)], _ink, _luck.Bits());
            _truths[index] = new(MarkStyle.None, Trouble.StrayDot);
        }
    }

    private Point MiddleOf(int index) => new(
        _form.Fields[index].XMm + _form.Fields[index].WidthMm / 2, _form.Fields[index].YMm + _form.Fields[index].HeightMm / 2);

    // Fields whose edges lie within so many field widths.
    private IEnumerable<int> Near(int index, double widths)
    {
        var a = _form.Fields[index];
        var reach = widths * a.WidthMm;
        for (var i = 0; i < _form.Fields.Count; i++)
        {
            var b = _form.Fields[i];
            if (i != index && b.XMm < a.XMm + a.WidthMm + reach && a.XMm < b.XMm + b.WidthMm + reach
                && b.YMm < a.YMm + a.HeightMm + reach && a.YMm < b.YMm + b.HeightMm + reach) yield return i;
        }
    }
}
