using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Hands;

namespace Slantwise.Surface.Tests.Marks.Measures;

/// <summary>A field that was read wrongly, silently or not: enough to make its picture again.</summary>
internal sealed record WrongField(ulong Seed, string Fault, Severity Severity, Severity Hand, string Key, FieldTruth Truth, FieldReading Reading, string Pen)
{
    public override string ToString() =>
        FormattableString.Invariant($"seed {Seed}, {Fault}, {Severity}, hand {Hand}, {Pen}: {Key} is {Truth.Style}/{Truth.Trouble}, read {Reading.Verdict} ({Reading.MarkedFraction:0.0000})");
}
