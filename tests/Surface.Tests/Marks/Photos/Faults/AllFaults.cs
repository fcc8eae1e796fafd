namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Every fault once, in the order of the report.</summary>
internal static class AllFaults
{
    public static IReadOnlyList<Fault> InOrder { get; } =
    [
        new Nothing(), new Leaning(), new Turned(), new BentLens(), new Curled(), new Folded(), new Creased(), new UnevenLight(), new HandShadow(), new Glare(),
        new Dim(), new Haze(), new Shaken(), new Unsharp(), new Noisy(), new Squeezed(), new Small(), new FarAway(), new CutAway(), new Patterned(), new Scanned(),
        new Faxed(), new CopiedPrint(), new CopiedSheet(), new Stapled(), new Stained(),
    ];
}
