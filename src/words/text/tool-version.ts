// The version that a report names. A test holds it equal to the package's.

export const TOOL_VERSION = '0.1.0';
