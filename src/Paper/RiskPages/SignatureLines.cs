using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.RiskPages;

/// <summary>Where a page is signed by hand: name, date and signature, each with a line to write on.</summary>
internal static class SignatureLines
{
    private const double WriteMm = 11;
    private const double GutterMm = 6;
    private const double LineMm = 0.3;

    // Of the room: a name, a date, a signature.
    private static readonly (string Key, double Fraction)[] Parts = [("SignName", 0.38), ("SignDate", 0.22), ("SignSignature", 0.4)];

    public static Block Of(RiskPage page, PageFrame frame)
    {
        var (type, size) = (frame.Type, frame.Type.SmallPt);
        return new Block(type.LineMm(size) * 2 + WriteMm, (sketch, top, _) =>
        {
            sketch.Words(frame.LeftMm, top + TypeScale.AscentMm(size), page.Say("SignHead"), size, weight: TextWeight.Bold);
            var line = top + type.LineMm(size) + WriteMm;
            var left = frame.LeftMm;
            var room = frame.RoomMm - GutterMm * (Parts.Length - 1);
            foreach (var (key, fraction) in Parts)
            {
                sketch.Rule(left, left + room * fraction, line, Tone.Muted, LineMm);
                sketch.Words(left, line + TypeScale.AscentMm(size) + 0.5, page.Say(key), size, Tone.Muted);
                left += room * fraction + GutterMm;
            }
        })
        { GapMm = 6 };
    }
}
