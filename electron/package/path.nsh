; Puts the folder of loamwright.cmd into the user's path, and takes it out again.
!macro customInstall
  nsExec::Exec `powershell -NoProfile -NonInteractive -Command "$$dir='$INSTDIR\bin'; $$path=[Environment]::GetEnvironmentVariable('Path','User'); if (($$path -split ';') -notcontains $$dir) { [Environment]::SetEnvironmentVariable('Path', (@($$path,$$dir) | Where-Object { $$_ }) -join ';', 'User') }"`
  Pop $0
!macroend

!macro customUnInstall
  nsExec::Exec `powershell -NoProfile -NonInteractive -Command "$$dir='$INSTDIR\bin'; $$path=[Environment]::GetEnvironmentVariable('Path','User'); [Environment]::SetEnvironmentVariable('Path', (($$path -split ';') | Where-Object { $$_ -and $$_ -ne $$dir }) -join ';', 'User')"`
  Pop $0
!macroend
