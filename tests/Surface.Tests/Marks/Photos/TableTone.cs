namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>The grey of what the sheet lies on.</summary>
internal sealed class TableTone(Table table, Luck luck)
{
    private readonly float _tone = (float)(table switch
    {
        Table.Dark => luck.Between(25, 70),
        Table.Middle => luck.Between(80, 150),
        Table.Light => luck.Between(180, 215),
        Table.Scanner => 250,
        _ => luck.Between(60, 110),
    });

    private readonly float _other = (float)luck.Between(130, 200);

    private readonly float _stepMm = (float)luck.Between(6, 30);

    public float At(float xMm, float yMm)
    {
        if (table is not (Table.Stripes or Table.Checks)) return _tone;
        var column = (int)MathF.Floor((xMm + (table == Table.Stripes ? yMm * .4f : 0)) / _stepMm) & 1;
        var row = table == Table.Checks ? (int)MathF.Floor(yMm / _stepMm) & 1 : 0;
        return column == row ? _tone : _other;
    }
}
