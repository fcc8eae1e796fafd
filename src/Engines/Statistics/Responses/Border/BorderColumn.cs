namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>A coefficient of the border and what it moves: rows of the pupils' layout, each by so much.</summary>
internal sealed record BorderColumn(CoefficientKind Kind, int Index, NormalPrior Prior, double[] Rows);
