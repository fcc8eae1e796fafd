namespace Slantwise.Storage.Postgres;

/// <summary>One of PostgreSQL's own programs ran and failed.</summary>
/// <param name="message">What it said.</param>
public sealed class PostgresToolException(string message) : InvalidOperationException(message);
