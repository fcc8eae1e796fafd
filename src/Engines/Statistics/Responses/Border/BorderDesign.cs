using Slantwise.Engines.Statistics.Responses.Pupils;

namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>How coefficients and residuals make up the rows: row = Σ column · coefficient, plus the level's residual. Coefficients stand first, then one residual a level.</summary>
internal sealed class BorderDesign
{
    private BorderDesign(RowLayout layout, List<BorderColumn> columns, double[][] covariates, ResponseData data, ResponseOptions options, Func<int, bool> isUsed, bool isCentred)
    {
        (Layout, Columns, Covariates) = (layout, columns, covariates);
        Prior = new(this, data.Levels, options, isUsed, isCentred);
    }

    public RowLayout Layout { get; }

    public List<BorderColumn> Columns { get; }

    /// <summary>Covariates by pupil.</summary>
    public double[][] Covariates { get; }

    public BorderPrior Prior { get; }

    public int Size => Columns.Count + Layout.Levels;

    public static BorderDesign Of(ResponseData data, ResponseOptions options, bool hasGrowth, bool hasShape, Func<int, bool> isUsed, bool isCentred = false, bool hasSpread = false)
    {
        var priors = options.Priors;
        var (covariates, pupilColumns) = PupilCovariates.Of(data, priors);
        var layout = new RowLayout(data.Levels.Count, hasGrowth, hasShape, pupilColumns.Count, hasSpread);
        var columns = new List<BorderColumn>();
        if (!options.IsFlat) LevelColumns(columns, data.Levels, layout, priors);
        else if (hasShape) columns.Add(Column(layout, CoefficientKind.DoseSlope, (int)DoseMeasure.Hold, priors.DoseSlope, (layout.ShapeRow, 1)));
        if (hasGrowth) columns.Add(Column(layout, CoefficientKind.Growth, 0, priors.Growth, (layout.GrowthRow, 1)));
        for (var m = 0; m < pupilColumns.Count; m++)
            columns.Add(Column(layout, pupilColumns[m].Kind, pupilColumns[m].Index, pupilColumns[m].Prior, (layout.FirstCovariateRow + m, 1)));
        return new(layout, columns, covariates, data, options, isUsed, isCentred);
    }

    /// <summary>The rows that coefficients and residuals make.</summary>
    public double[] RowsOf(ReadOnlySpan<double> border)
    {
        var rows = new double[Layout.RowCount];
        for (var c = 0; c < Columns.Count; c++)
            for (var r = 0; r < rows.Length; r++) rows[r] += Columns[c].Rows[r] * border[c];
        for (var j = 0; j < Layout.Levels; j++) rows[j] += border[Columns.Count + j];
        return rows;
    }

    /// <summary>A slope by row as a slope by coefficient and residual.</summary>
    public double[] ToBorder(ReadOnlySpan<double> byRow)
    {
        var border = new double[Size];
        for (var c = 0; c < Columns.Count; c++)
            for (var r = 0; r < byRow.Length; r++) border[c] += Columns[c].Rows[r] * byRow[r];
        byRow[..Layout.Levels].CopyTo(border.AsSpan(Columns.Count));
        return border;
    }

    /// <summary>Information by row (lower triangle) as information by coefficient and residual (both triangles).</summary>
    public double[] ToBorderInformation(double[] byRow)
    {
        int rows = Layout.RowCount, columns = Columns.Count, size = Size;
        var full = new double[rows * rows];
        for (var r = 0; r < rows; r++)
            for (var s = 0; s <= r; s++) full[r * rows + s] = full[s * rows + r] = byRow[r * rows + s];
        var border = new double[size * size];
        for (var c = 0; c < columns; c++)
        {
            var weighted = new double[rows];
            for (var r = 0; r < rows; r++)
            {
                if (Columns[c].Rows[r] is not 0 and var by)
                    for (var s = 0; s < rows; s++) weighted[s] += by * full[r * rows + s];
            }
            var row = ToBorder(weighted);
            for (var k = 0; k < size; k++) border[c * size + k] = border[k * size + c] = row[k];
        }
        for (var j = 0; j < Layout.Levels; j++)
            for (var k = 0; k < Layout.Levels; k++) border[(columns + j) * size + columns + k] = full[j * rows + k];
        return border;
    }

    private static void LevelColumns(List<BorderColumn> columns, IReadOnlyList<ResponseLevel> levels, RowLayout layout, ResponsePriors priors)
    {
        columns.Add(ByLevel(layout, CoefficientKind.Middle, 0, priors.Middle, levels, _ => 1));
        foreach (var measure in levels.Where(l => l.Dose is not null).Select(l => l.Dose!.Value.Measure).Distinct().Order())
        {
            var doses = levels.Where(l => l.Dose?.Measure == measure).Select(l => l.Dose!.Value.HardnessLogits).Distinct().Count();
            var isTimed = measure == DoseMeasure.Hold && layout.HasShape;
            if (doses < 2 && !isTimed) continue;
            var column = ByLevel(layout, CoefficientKind.DoseSlope, (int)measure, priors.DoseSlope, levels,
                l => l.Dose?.Measure == measure ? l.Dose.Value.HardnessLogits : 0);
            if (isTimed) column.Rows[layout.ShapeRow] = 1;
            columns.Add(column);
        }
        if (levels.Any(l => l.OrderLogits is not null)) columns.Add(ByLevel(layout, CoefficientKind.Order, 0, priors.Order, levels, l => l.OrderLogits ?? 0));
        for (var m = 0; levels.Count > 0 && m < levels[0].Covariates.Count; m++)
        {
            var place = m;
            columns.Add(ByLevel(layout, CoefficientKind.LevelCovariate, m, priors.LevelCovariate, levels, l => l.Covariates[place]));
        }
    }

    private static BorderColumn ByLevel(
        RowLayout layout, CoefficientKind kind, int index, NormalPrior prior, IReadOnlyList<ResponseLevel> levels, Func<ResponseLevel, double> value) =>
        Column(layout, kind, index, prior, [.. levels.Select((l, j) => (j, value(l)))]);

    private static BorderColumn Column(RowLayout layout, CoefficientKind kind, int index, NormalPrior prior, params ReadOnlySpan<(int Row, double Value)> entries)
    {
        var rows = new double[layout.RowCount];
        foreach (var (row, value) in entries) rows[row] = value;
        return new(kind, index, prior, rows);
    }
}
