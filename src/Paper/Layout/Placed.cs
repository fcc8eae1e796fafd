namespace Slantwise.Paper.Layout;

/// <summary>A block where it stands on its page.</summary>
internal sealed record Placed(Block Block, double TopMm, double HeightMm)
{
    public void DrawOn(Sketch sketch) => Block.Draw(sketch, TopMm, HeightMm);
}
