using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>During a set: a box for every trial, with room for its seconds where it is held.</summary>
internal sealed class TryCell(int trialCount, bool isHeld, PaperWords words)
{
    private const double GapMm = 1.6;
    private const double LeastBoxMm = 11.5;
    private const double MostBoxMm = 27;
    private const double BoxWidthMm = 10;

    // The column is wide enough for its heading and for what it asks, however few the trials.
    private const double LeastWidthMm = 38;
    private const int MostInRow = 5;

    private int RowCount => (trialCount + MostInRow - 1) / MostInRow;

    private int PerRow => (trialCount + RowCount - 1) / RowCount;

    public double WidthMm => Math.Max(LeastWidthMm, PerRow * (BoxWidthMm + GapMm) - GapMm);

    public double LeastMm => RowCount * LeastBoxMm + (RowCount - 1) * GapMm;

    public void DrawOn(Sketch sketch, double left, double top, double height)
    {
        var box = Math.Min(MostBoxMm, (height - (RowCount - 1) * GapMm) / RowCount);
        for (var i = 0; i < trialCount; i++)
        {
            var (x, y) = (left + i % PerRow * (BoxWidthMm + GapMm), top + i / PerRow * (box + GapMm));
            sketch.Field(x, y, BoxWidthMm, box);
            sketch.Words(x + 1.1, y + 0.4 + TypeScale.AscentMm(TypeScale.SmallPt), $"{i + 1}", TypeScale.SmallPt, Tone.Muted);
            if (isHeld) sketch.Words(x + BoxWidthMm - 1.1, y + box - 1.4, words["Seconds"], TypeScale.SmallPt, Tone.Muted, anchor: TextAnchor.End);
        }
    }
}
