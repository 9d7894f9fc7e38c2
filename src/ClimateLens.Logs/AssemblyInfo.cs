using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("ClimateLens.Logs.Tests")]
