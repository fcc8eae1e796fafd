namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The sheet lies in the picture at any angle, upside down too.</summary>
internal sealed class Turned : Fault
{
    public override string Name => "rotation";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
        shot.TurnRad = luck.Between(0, 2 * Math.PI);
        // Aslant it takes less of the picture; the camera comes as near as it can.
        shot.FillFraction = Range(severity, luck, (.94, .98), (.8, .9), (.5, .6));
    }
}
