namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The sheet lies on stripes, checks or a white table.</summary>
internal sealed class Patterned : Fault
{
    public override string Name => "patterned table";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.Table = luck.Pick([Table.Stripes, Table.Checks, Table.Light]);
}
