@echo off
rem The command line of the installed program; a batch file waits for its end, a terminal alone does not.
"%~dp0..\loamwright.exe" %*
exit /b %ERRORLEVEL%
